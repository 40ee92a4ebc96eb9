import { binomialUpTo } from './binomial';

/** McNemar's test on one-way items: those that came out one way only, and so many each way. */
export interface McNemar {
  readonly oneWay: number;
  readonly pTwoSided: number;
}

/** Two-sided exact McNemar: a fair coin for each one-way item (McNemar 1947, exact form). */
export function exactMcNemar(oneWay: number, otherWay: number): McNemar {
  const items = oneWay + otherWay;
  return { oneWay: items, pTwoSided: Math.min(1, 2 * binomialUpTo(Math.min(oneWay, otherWay), items, 0.5)) };
}
