import { errorFunction } from 'simple-statistics';

/** The share of a standard normal above `z`, good to 1e-7. */
export function normalTail(z: number): number {
  return (1 - errorFunction(z / Math.SQRT2)) / 2;
}
