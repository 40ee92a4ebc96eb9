import { medianAbsoluteDeviation, median as medianOf } from 'simple-statistics';

/** The middle of `values`, in their unit; `null` when there are none. */
export function median(values: readonly number[]): number | null {
  if (values.length < 2) return values[0] ?? null;
  return medianOf([...values]);
}

/** A middle and a spread that one wild value can't move. `spread` is 1.4826 × the median absolute deviation. */
export interface RobustSpread {
  readonly median: number;
  readonly spread: number;
}

/** Makes the median absolute deviation of a normal sample estimate its standard deviation. */
const normalConsistency = 1.4826;

/** Median and robust spread of `values`, in their unit; `null` when there are none. Ratcliff 1993 for the use. */
export function robustSpread(values: readonly number[]): RobustSpread | null {
  const middle = median(values);
  if (middle === null) return null;
  return { median: middle, spread: medianAbsoluteDeviation([...values]) * normalConsistency };
}

/** How many robust spreads `value` lies from the median, signed; 0 / 0 counts as 0. */
export function spreadsOut(value: number, of: RobustSpread): number {
  const away = value - of.median;
  return away === 0 ? 0 : away / of.spread;
}
