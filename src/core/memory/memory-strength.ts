import type { Day } from '../record/stamp';

/** How fast a use of a memory fades (ACT-R tutorial, unit 4). */
const usualDecay = 0.5;

/** Base-level strength from how long ago, over 0 and in one unit, each use was: ln Σ t^−d (ACT-R tutorial, unit 4). */
export function memoryStrength(ages: readonly number[], decay = usualDecay): number {
  return Math.log(ages.reduce((sum, age) => sum + age ** -decay, 0));
}

/** The same from the count of uses and the age of the first alone, as if they were spread evenly. */
export function evenMemoryStrength(uses: number, firstAge: number, decay = usualDecay): number {
  return Math.log(uses / (1 - decay)) - decay * Math.log(firstAge);
}

/**
 * The same from the newest uses as they were, and those before them as if spread evenly from the first to the oldest
 * of these: the hybrid form (Petrov 2006, from memory). `newest`: ages, of the `uses` the last.
 */
export function nearMemoryStrength(
  uses: number,
  firstAge: number,
  newest: readonly number[],
  decay = usualDecay,
): number {
  const exact = newest.reduce((sum, age) => sum + age ** -decay, 0);
  const others = uses - newest.length;
  const last = Math.max(0, ...newest);
  if (others <= 0) return Math.log(exact);
  if (firstAge <= last) return Math.log(exact + others * firstAge ** -decay);
  const spread = (firstAge ** (1 - decay) - last ** (1 - decay)) / ((1 - decay) * (firstAge - last));
  return Math.log(exact + others * spread);
}

/** The time to bring back a memory of such a strength, in the unit of `factor`: F·e^−A. */
export function recallTime(factor: number, strength: number): number {
  return factor * Math.exp(-strength);
}

const msADay = 86_400_000;

/** Days from one local date to another; negative when the second is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return (Date.parse(to) - Date.parse(from)) / msADay;
}
