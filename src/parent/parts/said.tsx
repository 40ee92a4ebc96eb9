import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { saidWords } from './said-words';

export interface SaidProps {
  readonly text: string;
  /** What it rests on, and by what rule: two lines. */
  readonly how: readonly string[];
  /** What the toggle asks; usually how one knows. */
  readonly ask?: string;
}

/** A sentence of the readings, with what it rests on a tap away. */
export function Said({ text, how, ask = saidWords.how }: SaidProps) {
  const isOpen = useSignal(false);
  const id = useId();
  return (
    <div class="said-reading">
      <p>
        {text}{' '}
        {how.length > 0 && (
          <button
            type="button"
            class="link how no-print"
            aria-expanded={isOpen.value}
            aria-controls={id}
            aria-label={`${ask} ${text}`}
            onClick={() => {
              isOpen.value = !isOpen.value;
            }}
          >
            {ask}
          </button>
        )}
      </p>
      <div id={id} class="how-lines" hidden={!isOpen.value}>
        {how.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </div>
  );
}
