import type { ComponentChildren } from 'preact';

export interface TickProps {
  readonly label: ComponentChildren;
  readonly isOn: boolean;
  readonly onTurn: (isOn: boolean) => void;
}

/** A plain tick box with its label. */
export function Tick({ label, isOn, onTurn }: TickProps) {
  return (
    <label class="option">
      <input
        type="checkbox"
        checked={isOn}
        onChange={({ currentTarget: box }) => {
          // The box shows what is recorded: it turns when the record is there, and not if that fails.
          box.checked = isOn;
          onTurn(!isOn);
        }}
      />
      <span>{label}</span>
    </label>
  );
}
