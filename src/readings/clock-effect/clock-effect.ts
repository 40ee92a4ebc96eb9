import { mean } from 'simple-statistics';
import { type AccuracyEffect, accuracyEffect } from './accuracy-effect';
import type { Meeting } from './meeting';
import { pairDays } from './pair-days';
import { type TimeEffect, timeEffect } from './time-effect';

/** What days with the clock and days without say of the same facts; never that the clock is the cause. */
export interface ClockEffect {
  /** Facts met on days of both kinds near enough to be set side by side. */
  readonly facts: number;
  readonly daysWith: number;
  readonly daysWithout: number;
  /** By how many days those with the clock came later, on average over pairs of days. */
  readonly clockLaterDays: number | null;
  readonly time: TimeEffect;
  readonly accuracy: AccuracyEffect;
}

/** How far apart, in days, two days may be to be set side by side (our own decision, no source). */
export const windowDays = 28;

/** The clock effect at a chance of error `alpha`: .05 for one look, less where several are taken. */
export function clockEffect(meetings: readonly Meeting[], alpha = 0.05): ClockEffect {
  const pairs = pairDays(meetings, windowDays);
  const gaps = pairs.map(({ withClock, without }) => withClock.dayCount - without.dayCount);
  const clockLaterDays = gaps.length === 0 ? null : mean(gaps);
  return {
    facts: new Set(pairs.map(({ withClock }) => withClock.fact)).size,
    daysWith: new Set(pairs.map(({ withClock }) => withClock.day)).size,
    daysWithout: new Set(pairs.map(({ without }) => without.day)).size,
    clockLaterDays,
    time: timeEffect(pairs, clockLaterDays ?? 0, alpha),
    accuracy: accuracyEffect(pairs, clockLaterDays ?? 0, alpha),
  };
}
