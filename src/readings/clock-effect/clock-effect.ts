import { mean } from 'simple-statistics';
import { groupBy } from '../group-by';
import { hodgesLehmann } from '../statistics/hodges-lehmann';
import type { Interval } from '../statistics/interval';
import { exactMcNemar } from '../statistics/mcnemar';
import { median } from '../statistics/robust-spread';
import { signedRank } from '../statistics/signed-rank';
import type { Meeting } from './meeting';
import { type DayPair, pairDays } from './pair-days';

/** Why nothing may be said: too few facts or one-way items, too few days, or no more than chance gives. */
export type NoClaim = 'tooFewFacts' | 'tooFewDays' | 'notBeyondChance';

/** How times differ, as a ratio: 1.2 is a fifth longer on days with the clock. */
export interface TimeEffect {
  readonly facts: number;
  readonly ratio: number | null;
  readonly interval: Interval | null;
  readonly pTwoSided: number;
  /** The same asked of the days instead of the facts: are they alike on all days, or was it one bad day? */
  readonly byDay: { readonly days: number; readonly pTwoSided: number };
  readonly claim: 'slower' | 'faster' | null;
  readonly noClaim: NoClaim | null;
}

/** How accuracy differs: facts right less often with the clock, more often, or as often. */
export interface AccuracyEffect {
  readonly worse: number;
  readonly better: number;
  readonly same: number;
  readonly pTwoSided: number;
  readonly claim: 'worse' | 'better' | null;
  readonly noClaim: NoClaim | null;
}

/** What days with the clock and days without say of the same facts; never that the clock is the cause. */
export interface ClockEffect {
  readonly facts: number;
  readonly daysWith: number;
  readonly daysWithout: number;
  /** Of all pairs of days, the share in which the day with the clock came later: far from ½, practice mixes in. */
  readonly clockLater: number | null;
  readonly time: TimeEffect;
  readonly accuracy: AccuracyEffect;
}

/** Fewer facts, or one-way items, can't be beyond chance at .05. */
export const fewestItems = 6;

/** Fewer days of a kind say more of those days than of the clock (our own decision, no source). */
export const fewestDays = 3;

/** How far apart, in days, two days may be to be set side by side (our own decision, no source). */
const windowDays = 28;

/** The clock effect at a chance of error `alpha`, .05 for one look and less where several are taken. */
export function clockEffect(meetings: readonly Meeting[], alpha = 0.05): ClockEffect {
  const pairs = pairDays(meetings, windowDays);
  const daysWith = new Set(pairs.map((pair) => pair.withClock.day)).size;
  const daysWithout = new Set(pairs.map((pair) => pair.without.day)).size;
  const later = pairs.filter((pair) => pair.withClock.day > pair.without.day).length;
  const enoughDays = Math.min(daysWith, daysWithout) >= fewestDays;
  const facts = groupBy(pairs, (pair) => pair.withClock.fact);
  return {
    facts: facts.length,
    daysWith,
    daysWithout,
    clockLater: pairs.length === 0 ? null : later / pairs.length,
    time: timeEffect(facts, enoughDays, alpha),
    accuracy: accuracyEffect(facts, enoughDays, alpha),
  };
}

function timeEffect(facts: readonly (readonly DayPair[])[], enoughDays: boolean, alpha: number): TimeEffect {
  const timed = facts.map((pairs) => pairs.flatMap(timedPair)).filter((pairs) => pairs.length > 0);
  const shifts = timed.map(
    (pairs) => middle(pairs.map((pair) => pair.withMs)) - middle(pairs.map((pair) => pair.withoutMs)),
  );
  const days = groupBy(timed.flat(), (pair) => pair.day);
  const byDay = days.map((pairs) => mean(pairs.map((pair) => pair.withMs - pair.withoutMs)));
  const at = hodgesLehmann(shifts, 1 - alpha);
  const { pTwoSided } = signedRank(shifts);
  const noClaim = whyNot(shifts.length, enoughDays, pTwoSided, alpha);
  return {
    facts: shifts.length,
    ratio: at === null ? null : Math.exp(at.shift),
    interval: at?.interval ? { low: Math.exp(at.interval.low), high: Math.exp(at.interval.high) } : null,
    pTwoSided,
    byDay: { days: byDay.length, pTwoSided: signedRank(byDay).pTwoSided },
    claim: noClaim || at === null ? null : at.shift > 0 ? 'slower' : 'faster',
    noClaim,
  };
}

function accuracyEffect(
  facts: readonly (readonly DayPair[])[],
  enoughDays: boolean,
  alpha: number,
): AccuracyEffect {
  const more = facts.map((pairs) =>
    mean(pairs.map(({ withClock, without }) => withClock.share - without.share)),
  );
  // Shares of the same answers in another order differ in the last bits.
  const worse = more.filter((difference) => difference < -1e-9).length;
  const better = more.filter((difference) => difference > 1e-9).length;
  const { pTwoSided } = exactMcNemar(worse, better);
  const noClaim = whyNot(worse + better, enoughDays, pTwoSided, alpha);
  const claim = noClaim ? null : worse > better ? 'worse' : 'better';
  return { worse, better, same: facts.length - worse - better, pTwoSided, claim, noClaim };
}

function whyNot(items: number, enoughDays: boolean, pTwoSided: number, alpha: number): NoClaim | null {
  if (items < fewestItems) return 'tooFewFacts';
  if (!enoughDays) return 'tooFewDays';
  return pTwoSided <= alpha ? null : 'notBeyondChance';
}

function timedPair({ withClock, without }: DayPair) {
  if (withClock.logMs === null || without.logMs === null) return [];
  return [{ day: withClock.day, withMs: withClock.logMs, withoutMs: without.logMs }];
}

function middle(values: readonly number[]): number {
  return median(values) ?? 0;
}
