import { useId } from 'preact/hooks';

export interface SelectProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, label: string])[];
  readonly onChoose: (value: string) => void;
}

/** One of a list that opens, for what is chosen now and not recorded. */
export function Select({ label, value, options, onChoose }: SelectProps) {
  const id = useId();
  return (
    <div class="select">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        {options.map(([one, says]) => (
          <option key={one} value={one}>
            {says}
          </option>
        ))}
      </select>
    </div>
  );
}
