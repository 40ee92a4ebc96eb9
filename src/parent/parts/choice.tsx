import type { ComponentChildren } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { Kept, useKept } from './kept';

export interface ChoiceOption<T extends string | number> {
  readonly value: T;
  readonly label: ComponentChildren;
}

export interface ChoiceProps<T extends string | number> {
  readonly legend: string;
  readonly hint?: string;
  readonly options: readonly ChoiceOption<T>[];
  readonly value: T | null;
  /** A promise of `true` says that it was kept. */
  readonly onChoose: (value: T) => unknown;
  readonly inRow?: boolean;
}

/** One of several, as plain radio buttons. */
export function Choice<T extends string | number>(props: ChoiceProps<T>) {
  const name = useId();
  const kept = useKept();
  const group = useRef<HTMLDivElement>(null);

  function choose(value: T) {
    // The buttons show what is recorded: they turn when the record is there, and not if that fails.
    const buttons = group.current?.querySelectorAll('input') ?? [];
    for (const [index, button] of [...buttons].entries()) {
      button.checked = props.options[index]?.value === props.value;
    }
    kept.follow(props.onChoose(value));
  }

  return (
    <fieldset class={props.inRow ? 'choice choice-row' : 'choice'}>
      <legend>{props.legend}</legend>
      {props.hint && <p class="hint">{props.hint}</p>}
      <div class="choice-options" ref={group}>
        {props.options.map((option) => (
          <label key={option.value} class="option">
            <input
              type="radio"
              name={name}
              checked={option.value === props.value}
              onChange={() => choose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      <Kept isKept={kept.isKept} />
    </fieldset>
  );
}
