import { type Interval, usualLevel } from './interval';
import { twoSidedZ } from './normal-quantile';
import { median } from './robust-spread';

/** One point of a line to be drawn: x in any unit, y in any unit. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A line through the middle. `slope` is in y's unit for one of x's; the interval is the slope's. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
  readonly interval: Interval | null;
}

/**
 * The median of the slopes between all pairs of points, and the interval of Sen 1968 (his normal curve, with
 * his correction for x that are alike). At 95 % it takes six points. `null` without two different x.
 */
export function theilSen(points: readonly Point[], level = usualLevel): Line | null {
  const slopes = pairSlopes(points);
  const lower = slopes[(slopes.length - 1) >> 1];
  const upper = slopes[slopes.length >> 1];
  if (lower === undefined || upper === undefined) return null;
  const slope = (lower + upper) / 2;
  const intercept = median(points.map(({ x, y }) => y - slope * x)) ?? 0;
  const cut = slopesCutOff(points, slopes.length, level);
  const low = slopes[cut - 1];
  const high = slopes[slopes.length - cut];
  const interval = cut === 0 || low === undefined || high === undefined ? null : { low, high };
  return { slope, intercept, interval };
}

/** The slope between each two points of different x, smallest first. */
function pairSlopes(points: readonly Point[]): Float64Array {
  // A plain array of a long stretch's slopes sorts ten times slower.
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let count = 0;
  points.forEach((point, index) => {
    for (let before = 0; before < index; before += 1) {
      const other = points[before] ?? point;
      if (other.x === point.x) continue;
      slopes[count] = (point.y - other.y) / (point.x - other.x);
      count += 1;
    }
  });
  return slopes.subarray(0, count).sort();
}

/** How far from each end the interval's own end stands, counted from 1, rounded to the safe side. */
function slopesCutOff(points: readonly Point[], slopes: number, level: number): number {
  const ties = sizesOfTies(points);
  const variance = ties.reduce((sum, size) => sum - signVariance(size), signVariance(points.length));
  return Math.max(0, Math.floor((slopes - twoSidedZ(level) * Math.sqrt(variance)) / 2));
}

/** The variance of Kendall's sum of signs over `count` values. */
function signVariance(count: number): number {
  return (count * (count - 1) * (2 * count + 5)) / 18;
}

function sizesOfTies(points: readonly Point[]): readonly number[] {
  // Nearly always one point a day, in the order of days.
  if (points.every(({ x }, index) => index === 0 || x > (points[index - 1]?.x ?? x))) return [];
  const sizes = new Map<number, number>();
  for (const { x } of points) sizes.set(x, (sizes.get(x) ?? 0) + 1);
  return [...sizes.values()];
}
