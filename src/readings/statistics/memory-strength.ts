/** How fast a use of a memory fades (ACT-R tutorial, unit 4). */
const usualDecay = 0.5;

/** Base-level strength from how long ago, in seconds over 0, each use was: ln Σ t^−d (ACT-R tutorial, unit 4). */
export function memoryStrength(agesS: readonly number[], decay = usualDecay): number {
  return Math.log(agesS.reduce((sum, age) => sum + age ** -decay, 0));
}

/** The same from the count of uses and the age of the first alone, as if they were spread evenly. */
export function evenMemoryStrength(uses: number, firstAgeS: number, decay = usualDecay): number {
  return Math.log(uses / (1 - decay)) - decay * Math.log(firstAgeS);
}

/** The time to bring back a memory of such a strength, in the unit of `factor`: F·e^−A. */
export function recallTime(factor: number, strength: number): number {
  return factor * Math.exp(-strength);
}
