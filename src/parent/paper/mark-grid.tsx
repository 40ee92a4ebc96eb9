import type { Signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { parseFact } from '../../core/fact/fact';
import type { PromptId } from '../../core/fact/prompt';
import { writtenFact } from '../../core/fact/written';
import { erased, type Marks, tapped, typed } from './marks';
import { resultWords } from './words';

const across = 5;

const steps: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowRight: 1,
  ArrowUp: -across,
  ArrowDown: across,
};

export interface MarkGridProps {
  readonly label: string;
  readonly prompts: readonly PromptId[];
  readonly state: Signal<Marks>;
  /** The place that has, or would have, the focus. */
  readonly at: Signal<number>;
  /** Takes the focus when it appears. */
  readonly isFocused?: boolean;
}

/** A sheet as it lies on the table, each fact with its answer: one tab stop, arrows inside, digits for what was written. */
export function MarkGrid({ label, prompts, state, at, isFocused = false }: MarkGridProps) {
  const grid = useRef<HTMLDivElement>(null);
  const focus = (place: number) => {
    at.value = place;
    grid.current?.querySelector<HTMLElement>(`[data-place="${place}"]`)?.focus();
  };
  useLayoutEffect(() => {
    if (isFocused) focus(at.value);
  }, []);

  function press(event: KeyboardEvent) {
    const { key } = event;
    const step = steps[key];
    if (step !== undefined) {
      const to = at.value + step;
      if (to >= 0 && to < prompts.length) focus(to);
    } else if (/^\d$/.test(key)) state.value = typed(state.value, prompts, at.value, key);
    else if (key === 'Backspace') state.value = erased(state.value, prompts, at.value);
    else return;
    event.preventDefault();
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: a sheet is no set of fields
    <div ref={grid} class="mark-grid" role="group" aria-label={label} onKeyDown={press}>
      {prompts.map((prompt, place) => (
        <MarkCell
          key={place}
          prompt={prompt}
          how={howOf(state.value, place)}
          place={place}
          isHere={at.value === place}
          onTap={() => {
            at.value = place;
            state.value = tapped(state.value, place);
          }}
        />
      ))}
    </div>
  );
}

interface How {
  readonly is: 'open' | 'right' | 'wrong' | 'blank' | 'notReached';
  readonly given: string | null;
}

function howOf({ reached, marks }: Marks, place: number): How {
  if (reached === null) return { is: 'open', given: null };
  if (place >= reached) return { is: 'notReached', given: null };
  const mark = marks.get(place);
  return { is: mark?.is ?? 'right', given: mark?.is === 'wrong' ? mark.given : null };
}

interface MarkCellProps {
  readonly prompt: PromptId;
  readonly how: How;
  readonly place: number;
  readonly isHere: boolean;
  readonly onTap: () => void;
}

function MarkCell({ prompt, how, place, isHere, onTap }: MarkCellProps) {
  const fact = parseFact(prompt);
  if (!fact) return null;
  const says = how.is === 'open' ? '' : how.given ? resultWords.wroteShort(how.given) : resultWords[how.is];
  return (
    <button
      type="button"
      data-place={place}
      data-fact={prompt}
      data-is={how.is}
      tabIndex={isHere ? 0 : -1}
      onClick={onTap}
    >
      <span>{`${writtenFact(fact)} =`}</span> <b>{fact.answer}</b>{' '}
      <small>{how.is === 'right' ? <span class="only-heard">{says}</span> : says}</small>
    </button>
  );
}
