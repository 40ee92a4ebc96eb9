import { mean } from 'simple-statistics';
import { groupBy } from '../group-by';
import { hodgesLehmann } from '../statistics/hodges-lehmann';
import type { Interval } from '../statistics/interval';
import { median } from '../statistics/robust-spread';
import { signedRank } from '../statistics/signed-rank';
import { type NoClaim, whyNoClaim } from './claim';
import type { DayPair } from './pair-days';

/** How times differ, as a ratio: 1.2 is a fifth longer on days with the clock. */
export interface TimeEffect {
  readonly facts: number;
  readonly ratio: number | null;
  readonly interval: Interval | null;
  readonly pTwoSided: number;
  /** The same asked of the days with the clock instead of the facts: was it so on most, or one bad day? */
  readonly byDay: { readonly days: number; readonly pTwoSided: number };
  readonly claim: 'slower' | 'faster' | null;
  readonly noClaim: NoClaim | null;
}

/** The shift of log times over facts, one shift a fact: the median over its pairs of days. */
export function timeEffect(pairs: readonly DayPair[], clockLaterDays: number, alpha: number): TimeEffect {
  const timed = pairs.flatMap(shiftOf);
  const byFact = groupBy(timed, ({ fact }) => fact).map(
    (shifts) => median(shifts.map(({ shift }) => shift)) ?? 0,
  );
  const byDay = groupBy(timed, ({ day }) => day).map((shifts) => mean(shifts.map(({ shift }) => shift)));
  const at = hodgesLehmann(byFact, 1 - alpha);
  const { pTwoSided } = signedRank(byFact);
  const pByDay = signedRank(byDay).pTwoSided;
  const clockBetter = (at?.shift ?? 0) < 0;
  const noClaim = whyNoClaim({
    items: byFact.length,
    days: byDay.length,
    pTwoSided,
    alpha,
    pByDay,
    clockBetter,
    clockLaterDays,
  });
  return {
    facts: byFact.length,
    ratio: at === null ? null : Math.exp(at.shift),
    interval: at?.interval ? { low: Math.exp(at.interval.low), high: Math.exp(at.interval.high) } : null,
    pTwoSided,
    byDay: { days: byDay.length, pTwoSided: pByDay },
    claim: noClaim ? null : clockBetter ? 'faster' : 'slower',
    noClaim,
  };
}

function shiftOf({ withClock, without }: DayPair) {
  if (withClock.logMs === null || without.logMs === null) return [];
  return [{ fact: withClock.fact, day: withClock.day, shift: withClock.logMs - without.logMs }];
}
