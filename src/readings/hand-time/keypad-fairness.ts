import { type Band, scaleLimit } from '../../core/marking/band';
import type { ChildSettings } from '../../core/record/settings';
import type { HandTime } from './hand-time';

/** A timed sheet to be keyed by these hands. */
export interface SheetToKey {
  readonly hand: HandTime;
  /** How many digits each answer has, in the order of the sheet. */
  readonly digits: readonly number[];
  readonly takesItself: boolean;
  /** Of 25, as in the child's settings. */
  readonly limits: ChildSettings['limits'];
  /** Time to think left for each answer; 0 asks what the hands alone could enter. */
  readonly thinkMs: number;
}

/** What hands could enter by the bell, and the bands that lie beyond it. */
export interface Fairness {
  readonly mostAnswers: number;
  /** From the top band down. */
  readonly outOfReach: readonly Band[];
  /** The shortest allowance in whole seconds with every band in reach; `null` where all are already. */
  readonly restoringS: number | null;
}

const limited = ['firm', 'even', 'loose'] as const;

/** Whether each band can be reached in the allowance; `null` where the hand time lacks a part this sheet needs. */
export function keypadFairness(sheet: SheetToKey, allowanceMs: number): Fairness | null {
  const ends = endsOf(sheet);
  if (ends === null) return null;
  const mostAnswers = ends.filter((endMs) => endMs <= allowanceMs).length;
  const needed = (band: (typeof limited)[number]) => scaleLimit(sheet.limits[band], ends.length);
  const outOfReach = limited.filter((band) => needed(band) > mostAnswers);
  const most = Math.max(...outOfReach.map(needed));
  const lastMs = ends[Math.min(most, ends.length) - 1];
  // Thousandths of a ms are what adding up fractions can be wrong by, and must not cost a second.
  const restoringS = lastMs === undefined ? null : Math.ceil(lastMs / 1000 - 1e-6);
  return { mostAnswers, outOfReach, restoringS };
}

/** When each answer would be entered, ms from the first card's onset. */
function endsOf({ hand, digits, takesItself, thinkMs }: SheetToKey): readonly number[] | null {
  const { firstKeyMs, gapMs, doneMs, turnMs } = hand;
  const needsGap = digits.some((count) => count > 1);
  if ((needsGap && gapMs === null) || (!takesItself && doneMs === null)) return null;
  const done = takesItself ? 0 : (doneMs ?? 0);
  let atMs = 0;
  return digits.map((count, place) => {
    atMs += (place === 0 ? 0 : (turnMs ?? 0)) + thinkMs + firstKeyMs + (count - 1) * (gapMs ?? 0) + done;
    return atMs;
  });
}
