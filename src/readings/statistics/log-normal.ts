import { normalQuantile } from './normal-quantile';

/** A log-normal spread of times: `median` in any unit, `s` the standard deviation of the natural logs. */
export interface LogNormal {
  readonly median: number;
  readonly s: number;
}

/** Its mean, in the unit of the median. */
export function logNormalMean({ median, s }: LogNormal): number {
  return median * Math.exp((s * s) / 2);
}

/** The value below which a share `p` (0 to 1) lies, in the unit of the median. */
export function logNormalQuantile({ median, s }: LogNormal, p: number): number {
  return median * Math.exp(s * normalQuantile(p));
}
