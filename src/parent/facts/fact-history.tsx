import { useSignal } from '@preact/signals';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Fact } from '../../core/fact/fact';
import { writtenWhole } from '../../core/fact/written';
import type { Id } from '../../core/record/stamp';
import { type Answer, thinkOf } from '../../readings/child-log/answer';
import { sentenceOfFact } from '../../readings/sentences/of-facts';
import { say } from '../../readings/sentences/say';
import type { Desk } from '../../state/desk';
import { causeText } from '../marking/cause-words';
import { markingWords } from '../marking/words';
import { Said } from '../parts/said';
import { secondsText, shortDay } from '../parts/when';
import { turnTo } from '../place';
import { causesOf } from '../reading/causes';
import type { ChildReading } from '../reading/child-reading';

import { OwnLine } from './own-line';
import { factsWords } from './words';

export interface FactHistoryProps {
  readonly desk: Desk;
  readonly reading: ChildReading;
  readonly fact: Fact;
  readonly onClose: () => void;
}

const pageful = 20;

/** One fact: what is known of it, and every answer to it, the newest first. */
export function FactHistory({ desk, reading, fact, onClose }: FactHistoryProps) {
  const shown = useSignal(pageful);
  const title = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => title.current?.focus(), []);
  const rows = useMemo(() => historyOf(reading, fact), [reading, fact]);
  const known = reading.facts.get(fact.id);
  const { historyColumns: columns } = factsWords;
  const whole = writtenWhole(fact);
  return (
    <section class="card fact-history" aria-label={whole}>
      <h3 ref={title} tabIndex={-1}>
        {whole}
      </h3>
      {known ? <Said {...say(sentenceOfFact(known), reading.child.name)} /> : <p>{factsWords.notMet}</p>}
      {rows.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard
        <section class="table-frame" tabIndex={0} aria-label={factsWords.history(whole)}>
          <table class="plain">
            <thead>
              <tr>
                {Object.values(columns).map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.slice(0, shown.value).map((row) => (
                <tr key={`${row.sheet} ${row.answer.sitting} ${row.answer.place}`}>
                  <th scope="row">
                    <button
                      type="button"
                      class="link"
                      onClick={() => turnTo('marking', { sitting: row.sheet })}
                    >
                      {shortDay(row.answer.day)}
                    </button>
                    {row.answer.onRow && `, ${factsWords.onRow}`}
                  </th>
                  <td>{row.answer.given ?? '–'}</td>
                  <td>{outcomeOf(row.answer)}</td>
                  <td>{timeOf(row.answer)}</td>
                  <td>{row.answer.withClock ? factsWords.withClock : factsWords.withoutClock}</td>
                  <td class="wraps">{row.cause}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <OwnLine desk={desk} fact={fact} had={hadBy(reading)} />
      <div class="actions no-print">
        {rows.length > shown.value && (
          <button
            type="button"
            onClick={() => {
              shown.value += pageful;
            }}
          >
            {factsWords.older}
          </button>
        )}
        <button type="button" onClick={onClose}>
          {factsWords.close}
        </button>
      </div>
    </section>
  );
}

/** Facts right more often than not, on which a strategy may rest. */
function hadBy({ facts }: ChildReading): ReadonlySet<string> {
  const known = [...facts.values()].filter(({ state }) => state === 'quick' || state === 'slow');
  return new Set(known.map(({ fact }) => fact.id));
}

interface Row {
  readonly answer: Answer;
  /** The sheet it is marked with. */
  readonly sheet: Id;
  readonly cause: string;
}

function historyOf(reading: ChildReading, fact: Fact): readonly Row[] {
  return reading.log.sats
    .flatMap(({ ruled, answers }) => {
      const own = answers.filter((answer) => answer.fact.id === fact.id);
      if (own.length === 0) return [];
      const causes = own.some(({ outcome }) => outcome === 'wrong') ? causesOf(reading, ruled) : new Map();
      return own.map((answer) => {
        const cause = answer.outcome === 'wrong' ? causes.get(answer.place) : undefined;
        return {
          answer,
          sheet: ruled.sat.of ?? ruled.sat.id,
          cause: cause ? causeText(fact, answer.given, cause.read) : '',
        };
      });
    })
    .toReversed();
}

function outcomeOf({ outcome, slip, accepted }: Answer): string {
  if (outcome === 'right' && accepted) return factsWords.byRuling;
  return outcome === 'wrong' && slip ? `${outcome}: ${markingWords.slip.toLowerCase()}` : outcome;
}

/** Where the hands were never measured the time to the first key stands for more than thinking. */
function timeOf(answer: Answer): string {
  const think = thinkOf(answer);
  if (think !== null) return secondsText(think);
  return answer.firstKeyMs === null ? '–' : factsWords.atMost(secondsText(answer.firstKeyMs));
}
