import { useLayoutEffect, useRef } from 'preact/hooks';
import { parseFact } from '../../core/fact/fact';
import type { RuledSat } from '../../core/household/history';
import type { Marked } from '../../core/marking/marked';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { causeText, looksLikeSlip } from '../marking/cause-words';
import { ruledDraft } from '../marking/rule';
import { promptText } from '../marking/words';
import { causesOf } from '../reading/causes';
import { type ChildReading, childReading } from '../reading/child-reading';
import { useRead } from '../reading/use-read';
import type { NeedsProps } from './needs';
import './slips.css';
import { todayWords } from './words';

/** A wrong answer of today that looks like a slip of the hand, on which nobody has ruled. */
export interface DoubtfulSlip {
  readonly sat: RuledSat['sat'];
  readonly place: number;
  readonly fact: string;
  readonly given: string;
  readonly looksLike: string;
}

/** Today's doubtful slips, on the sheets and their rows. */
export function useDoubtfulSlips({ desk, child, day }: NeedsProps): readonly DoubtfulSlip[] {
  const household = desk.household.value;
  const history = desk.history.value;
  const read = useRead(() => {
    if (!history) return [];
    const reading = childReading(household, history, child);
    return day.sheets.flatMap(({ ruled, marked, parts, later }) => [
      ...slipsIn(reading, ruled, marked),
      ...parts.flatMap((part, index) => {
        const own = later[index];
        return own && part.sat.purpose === 'row' ? slipsIn(reading, part, own) : [];
      }),
    ]);
  }, [household, history, child, day]);
  return read ?? [];
}

function slipsIn(reading: ChildReading, ruled: RuledSat, { places }: Marked): readonly DoubtfulSlip[] {
  if (!places.some(({ outcome }) => outcome === 'wrong')) return [];
  const causes = causesOf(reading, ruled);
  return places.flatMap(({ place, prompt, outcome, slip, given }) => {
    const cause = causes.get(place);
    const fact = parseFact(prompt);
    if (outcome !== 'wrong' || slip !== null || given === null || !cause || !fact) return [];
    if (!looksLikeSlip(cause.read)) return [];
    const looksLike = causeText(fact, given, cause.read);
    return [{ sat: ruled.sat, place, fact: promptText(prompt), given, looksLike }];
  });
}

export interface DoubtfulSlipsProps {
  readonly desk: Desk;
  readonly acting: Acting;
  readonly slips: readonly DoubtfulSlip[];
}

/** Each to be ruled in one tap; nothing has to be. */
export function DoubtfulSlips({ desk, acting, slips }: DoubtfulSlipsProps) {
  const list = useRef<HTMLUListElement>(null);
  const hasRuled = useRef(false);
  // The row that was ruled is gone, and with it the focus: it goes on to the next.
  useLayoutEffect(() => {
    if (hasRuled.current) list.current?.querySelector('button')?.focus();
    hasRuled.current = false;
  }, [slips.length]);
  function rule({ sat, place, fact }: DoubtfulSlip, slip: boolean) {
    hasRuled.current = true;
    const ruling = { what: 'slip', place, slip } as const;
    void acting.record(desk, [ruledDraft(sat, ruling)], todayWords.ruledSlip(fact, slip));
  }
  return (
    <>
      <p>{todayWords.doubtfulSlip(slips.length)}</p>
      <ul class="bare slips" ref={list}>
        {slips.map((one) => (
          <li key={`${one.sat.id} ${one.place}`}>
            <span>{todayWords.slipRow(one.fact, one.given, one.looksLike)}</span>
            <span class="slip-choice">
              <button type="button" aria-label={todayWords.slipOf(one.fact)} onClick={() => rule(one, true)}>
                {todayWords.slip}
              </button>
              <button
                type="button"
                aria-label={todayWords.miscalculationOf(one.fact)}
                onClick={() => rule(one, false)}
              >
                {todayWords.miscalculation}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <p class="hint">{todayWords.slipMeans}</p>
    </>
  );
}
