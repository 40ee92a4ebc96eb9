import type { ComponentChildren } from 'preact';
import { Kept, useKept } from './kept';

export interface TickProps {
  readonly label: ComponentChildren;
  readonly isOn: boolean;
  /** A promise of `true` says that it was kept. */
  readonly onTurn: (isOn: boolean) => unknown;
}

/** A plain tick box with its label. */
export function Tick({ label, isOn, onTurn }: TickProps) {
  const kept = useKept();
  return (
    <span class="tick">
      <label class="option">
        <input
          type="checkbox"
          checked={isOn}
          onChange={({ currentTarget: box }) => {
            // The box shows what is recorded: it turns when the record is there, and not if that fails.
            box.checked = isOn;
            kept.follow(onTurn(!isOn));
          }}
        />
        <span>{label}</span>
      </label>
      <Kept isKept={kept.isKept} />
    </span>
  );
}
