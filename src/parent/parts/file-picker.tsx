import './file-picker.css';
import { useId } from 'preact/hooks';

export interface FilePickerProps {
  readonly label: string;
  /** Kinds of file, as the attribute takes them. */
  readonly accept: string;
  readonly onChoose: (file: File) => unknown;
}

/** Asks the device for one file. */
export function FilePicker({ label, accept, onChoose }: FilePickerProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        onChange={async ({ currentTarget: input }) => {
          const [file] = input.files ?? [];
          if (file) await onChoose(file);
          // The same file again is a choice as well.
          input.value = '';
        }}
      />
    </div>
  );
}
