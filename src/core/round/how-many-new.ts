import type { RoundSummary } from '../summary/summary';

/** Where a child starts whose rate is not known: the mean is 4.05, SD .71 (Burns et al. 2016, 55 pupils). */
const startRate = 4;

/** The bounds of new facts in a day: a fixed 2 and a fixed 8 are the study's own extremes (Burns et al. 2016). */
export const newFactBounds = { least: 2, most: 8 } as const;

/** How many of the newest judged days make the rate; days that lack stand at the start (our own decision). */
const daysCounted = 4;

/**
 * How many facts are new in today's round, 2 to 8: the child's own rate of taking them in, or what the parent fixed. A
 * day tells as many as were right when first asked on a later day; where all were, one more than that, since
 * there was room (our own decision). A day of which a fact has not been asked again is not judged yet.
 */
export function howManyNew(rounds: readonly RoundSummary[], fixed: number | null): number {
  if (fixed !== null) return bounded(fixed);
  const told = rounds.filter(
    ({ waiting, taken, missed }) => waiting.length === 0 && taken + missed.length > 0,
  );
  const rates = told
    .slice(-daysCounted)
    .map(({ taken, missed }) => (missed.length === 0 ? taken + 1 : taken));
  const sum = rates.reduce((all, rate) => all + rate, startRate * (daysCounted - rates.length));
  return bounded(sum / daysCounted);
}

function bounded(count: number): number {
  return Math.min(newFactBounds.most, Math.max(newFactBounds.least, Math.round(count)));
}
