import { sum } from 'simple-statistics';
import { normalTail } from '../statistics/normal-tail';
import { shrink, type VarianceParts, varianceParts } from '../statistics/shrinkage';
import type { Weighed } from './weigh-answers';

/** "Within 3 seconds" is a classroom convention (Van de Walle), not an empirical cut; fast counting also passes. */
export const quickMs = 3000;

/** Sooner than a fact can be read, or later than a child stays with it: left out of times, the one declared cut. */
const cut = { fromMs: 300, toMs: 20_000 } as const;

/** Times of fewer answers can't show less spread than this, s of a log-normal (our own decision, no source). */
const leastSpread = 0.25;

/**
 * The natural log of a right answer's time to the first key over that of the line between quick and slow for these
 * hands: below 0 is quick. Where the hands were never measured none is taken off, so that quick is still surely quick.
 */
function logPace({ answer }: Weighed): number | null {
  const { outcome, firstKeyMs, handMs } = answer;
  if (outcome !== 'right' || firstKeyMs === null || firstKeyMs < cut.fromMs || firstKeyMs > cut.toMs)
    return null;
  return Math.log(firstKeyMs / (quickMs + (handMs ?? 0)));
}

/** How sure it is that a fact's usual think time is under, and over, the line; `value` as in `logPace`. */
export interface Pace {
  readonly value: number;
  readonly quick: number;
  readonly slow: number;
  /** How many times it rests on. */
  readonly times: number;
}

/** The child's own level over a pool of facts; `null` while too few answers are timed. */
export function ownLevel(facts: readonly (readonly Weighed[])[]): VarianceParts | null {
  return varianceParts(facts.map((answers) => answers.flatMap((one) => logPace(one) ?? [])));
}

/** A fact's pace, drawn toward the child's level. As with accuracy the level may take sureness away, never give any. */
export function paceOf(answers: readonly Weighed[], level: VarianceParts | null): Pace | null {
  const weights: number[] = [];
  const weighed: number[] = [];
  for (const one of answers) {
    const pace = logPace(one);
    if (pace === null) continue;
    weights.push(one.weight);
    weighed.push(pace * one.weight);
  }
  if (weights.length === 0) return null;
  const total = sum(weights);
  const own = sum(weighed) / total;
  const count = total ** 2 / sum(weights.map((weight) => weight ** 2));
  const within = Math.max(leastSpread ** 2, level?.within ?? leastSpread ** 2);
  const ownError = Math.sqrt(within / count);
  const drawn = level === null || level.between === 0 ? null : shrink(own, count, { ...level, within });
  const under = (value: number, error: number) => normalTail(value / error);
  const views = [under(own, ownError), ...(drawn ? [under(drawn.value, drawn.error)] : [])];
  return {
    value: drawn?.value ?? own,
    quick: Math.min(...views),
    slow: Math.min(...views.map((view) => 1 - view)),
    times: weights.length,
  };
}
