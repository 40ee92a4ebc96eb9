import type { ReadonlySignal } from '@preact/signals';
import './bell-sign.css';
import { words } from './words';

export interface BellSignProps {
  readonly rang: ReadonlySignal<boolean>;
  /** Whether there is a thread in the hem to be tied off. */
  readonly hasThread: boolean;
}

/** That the bell has rung, for who can't hear it: still, by shape alone. Goes before the thread, whose needle it takes off. */
export function BellSign({ rang, hasThread }: BellSignProps) {
  return (
    <>
      {rang.value && (
        <svg class="bell-sign" viewBox="0 0 72 40" aria-hidden="true">
          {hasThread && (
            <path class="tied" d="M-4 20C10 20 20 9 22 17S6 30 7 20 22 12 24 24M13 20Q24 22 28 31" />
          )}
          <path class="bell" d="M36 30C43 25 39 9 51 9S59 25 66 30ZM51 9V5" />
          <circle class="clapper" cx="51" cy="34" r="3" />
        </svg>
      )}
      <p class="only-heard" role="status">
        {rang.value ? words.finishThis : ''}
      </p>
    </>
  );
}
