import { type Interval, usualLevel } from './interval';
import { twoSidedZ } from './normal-quantile';

/** Wilson's interval of a share from `right` out of `of` (a count over 0), both ends 0 to 1. Wilson 1927. */
export function wilsonInterval(right: number, of: number, level = usualLevel): Interval {
  const z2 = twoSidedZ(level) ** 2;
  const middle = right + z2 / 2;
  const reach = Math.sqrt(z2 * ((right * (of - right)) / of + z2 / 4));
  return {
    low: right === 0 ? 0 : (middle - reach) / (of + z2),
    high: right === of ? 1 : (middle + reach) / (of + z2),
  };
}
