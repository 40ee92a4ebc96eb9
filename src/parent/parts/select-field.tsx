import { useId } from 'preact/hooks';
import { Kept, useKept } from './kept';

export interface SelectFieldProps<T extends number | null> {
  readonly label: string;
  readonly hint: string;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly value: T;
  /** A promise of `true` says that it was kept. */
  readonly onChoose: (value: T) => unknown;
}

/** One of many, as a plain list that opens. */
export function SelectField<T extends number | null>(props: SelectFieldProps<T>) {
  const { label, hint, options, value, onChoose } = props;
  const id = useId();
  const kept = useKept();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <p class="hint" id={`${id}-hint`}>
        {hint}
      </p>
      <span class="field-line">
        <select
          id={id}
          aria-describedby={`${id}-hint`}
          value={`${value}`}
          onChange={({ currentTarget: list }) => {
            const chosen = options.find((option) => `${option.value}` === list.value);
            // The list shows what is recorded: it turns when the record is there, and not if that fails.
            list.value = `${value}`;
            if (chosen) kept.follow(onChoose(chosen.value));
          }}
        >
          {options.map((option) => (
            <option key={`${option.value}`} value={`${option.value}`}>
              {option.label}
            </option>
          ))}
        </select>
        <Kept isKept={kept.isKept} />
      </span>
    </div>
  );
}
