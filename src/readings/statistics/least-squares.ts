import { linearRegression } from 'simple-statistics';
import type { Point } from './theil-sen';

/** The least-squares line, slope in y's unit for one of x's; `null` without two different x. */
export function leastSquares(
  points: readonly Point[],
): { readonly slope: number; readonly intercept: number } | null {
  if (!points.some(({ x }) => x !== points[0]?.x)) return null;
  const { m, b } = linearRegression(points.map(({ x, y }) => [x, y]));
  return { slope: m, intercept: b };
}
