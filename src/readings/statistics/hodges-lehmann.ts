import { type Interval, usualLevel } from './interval';
import { twoSidedZ } from './normal-quantile';
import { median } from './robust-spread';
import { signedRankNull } from './signed-rank-null';

/** A shift, in the unit of the differences, and where it may lie; no interval under the level asked is given. */
export interface Shift {
  readonly shift: number;
  readonly interval: Interval | null;
}

const mostExact = 150;

/**
 * The middle of all pairwise means of paired differences, with the interval that inverts the signed-rank test
 * (Hodges & Lehmann 1963; Hollander & Wolfe 1973). Six differences are the fewest with an interval at 95 %.
 * Differences of 0 are kept here, though the test leaves them out. `null` without differences.
 */
export function hodgesLehmann(differences: readonly number[], level = usualLevel): Shift | null {
  const means = walshMeans(differences);
  const shift = median(means);
  if (shift === null) return null;
  const cut = meansCutOff(differences.length, level);
  const low = means[cut - 1];
  const high = means[means.length - cut];
  const interval = cut === 0 || low === undefined || high === undefined ? null : { low, high };
  return { shift, interval };
}

/** The mean of every pair of values, each with itself too, sorted. */
function walshMeans(values: readonly number[]): readonly number[] {
  const means: number[] = [];
  values.forEach((value, index) => {
    for (let other = 0; other <= index; other += 1) means.push((value + (values[other] ?? 0)) / 2);
  });
  return means.sort((x, y) => x - y);
}

/** How far from each end the interval's own end stands, counted from 1; 0 where even the ends are not enough. */
function meansCutOff(count: number, level: number): number {
  const each = (1 - level) / 2;
  if (count > mostExact) {
    const total = count * (count + 1);
    const spread = Math.sqrt((total * (2 * count + 1)) / 24);
    return Math.max(1, Math.floor(total / 4 - twoSidedZ(level) * spread));
  }
  const chance = signedRankNull(Array.from({ length: count }, (_, index) => index + 1));
  let below = 0;
  for (let sum = 0; ; sum += 1) {
    below += chance[2 * sum] ?? 1;
    if (below > each) return sum;
  }
}
