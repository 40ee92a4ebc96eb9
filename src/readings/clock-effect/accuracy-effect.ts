import { mean } from 'simple-statistics';
import { groupBy } from '../group-by';
import { exactMcNemar } from '../statistics/mcnemar';
import { type NoClaim, whyNoClaim } from './claim';
import type { DayPair } from './pair-days';

/** How accuracy differs: facts right less often with the clock, more often, or as often. */
export interface AccuracyEffect {
  readonly worse: number;
  readonly better: number;
  readonly same: number;
  readonly pTwoSided: number;
  readonly claim: 'worse' | 'better' | null;
  readonly noClaim: NoClaim | null;
}

/**
 * McNemar over facts, each one outcome: its share right on days with the clock less that on days without, over as
 * many days of either kind. With one day of each it is the plain test.
 */
export function accuracyEffect(
  pairs: readonly DayPair[],
  clockLaterDays: number,
  alpha: number,
): AccuracyEffect {
  const gains = pairs.flatMap(gainOf);
  const byFact = groupBy(gains, ({ fact }) => fact).map((own) => mean(own.map(({ gain }) => gain)));
  // Shares of the same answers in another order differ in the last bits.
  const worse = byFact.filter((difference) => difference < -1e-9).length;
  const better = byFact.filter((difference) => difference > 1e-9).length;
  const { pTwoSided } = exactMcNemar(worse, better);
  const noClaim = whyNoClaim({
    items: worse + better,
    days: new Set(gains.map(({ day }) => day)).size,
    pTwoSided,
    alpha,
    pByDay: null,
    clockBetter: better > worse,
    clockLaterDays,
  });
  const claim = noClaim ? null : better > worse ? 'better' : 'worse';
  return { worse, better, same: byFact.length - worse - better, pTwoSided, claim, noClaim };
}

function gainOf({ withClock, without }: DayPair) {
  if (withClock.share === null || without.share === null) return [];
  return [{ fact: withClock.fact, day: withClock.day, gain: withClock.share - without.share }];
}
