import type { ReadonlySignal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';
import type { GapLine } from '../core/gap-line/gap-line';
import { lineAsk } from '../core/gap-line/words';
import './asked.css';
import { cardTiming, type OnShown, watchOnset } from './onset';
import { words } from './words';

/** What a card needs that asks for more than a fact. */
export interface AskedProps {
  readonly id: string;
  /** The answer is shown, to be read and then entered. */
  readonly whole: boolean;
  readonly entry: ReadonlySignal<string>;
  readonly onShown: OnShown;
}

/** A counting pattern as cells on a thread; the digits go into the gap that is asked for. */
export function LineCard({ line, id, whole, entry, onShown }: AskedProps & { readonly line: GapLine }) {
  useLayoutEffect(() => watchOnset(id, onShown), []);
  const isInGap = line.asked !== null && !whole;
  const answer = (
    <output class="answer" aria-label={words.yourAnswer}>
      {entry}
    </output>
  );
  return (
    <div class="card asked line-card">
      <p class="note" id={id} {...{ elementtiming: cardTiming }}>
        {whole ? words.nowYou : lineAsk(line)}
      </p>
      <ol class="cells">
        {line.shown.map((number, place) => (
          <li key={place} class={number === null && place !== line.asked ? 'open' : ''}>
            {place === line.asked ? isInGap ? answer : <b>{line.answer}</b> : number}
          </li>
        ))}
      </ol>
      {whole && line.asked === null && <b class="shown-step">{line.answer}</b>}
      {!isInGap && answer}
    </div>
  );
}
