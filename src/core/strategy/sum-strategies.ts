import type { DifferenceStrategy, SumStrategy } from './strategy';

/** The ways to a + b, for one-digit numbers, best first; empty for others. */
export function sumStrategies(a: number, b: number): readonly SumStrategy[] {
  const [small, large] = a < b ? [a, b] : [b, a];
  if (large > 9) return [];
  if (small === 0) return [{ kind: 'noneMore', n: large }];
  if (small === 1) return [{ kind: 'oneMore', n: large }];
  const ways: SumStrategy[] = [];
  if (small === large) ways.push(small > 5 ? { kind: 'twoFives', n: small } : { kind: 'double', n: small });
  if (small === 2) ways.push({ kind: 'twoMore', n: large });
  if (small + large === 10) ways.push({ kind: 'makesTen', a: large, b: small });
  if (large === 9) ways.push({ kind: 'tenLessOne', n: small });
  if (large - small === 1) ways.push({ kind: 'doubleAndOne', n: small });
  if (small + large === 9) ways.push({ kind: 'oneUnderTen', a: small, b: large });
  if (large - small === 2) ways.push({ kind: 'doubleBetween', n: small + 1 });
  if (small + large > 10) ways.push({ kind: 'fillTen', large, small });
  return ways;
}

/** The ways to a − b, for what one-digit sums take back, best first; empty for others. */
export function differenceStrategies(a: number, b: number): readonly DifferenceStrategy[] {
  const left = a - b;
  if (b > 9 || left > 9 || left < 0) return [];
  if (b === 0) return [{ kind: 'takeNone', a }];
  if (left === 0) return [{ kind: 'takeAll', a }];
  if (b === 1) return [{ kind: 'oneLess', a }];
  const ways: DifferenceStrategy[] = [];
  if (left === 1) ways.push({ kind: 'countUp', a, b });
  if (left === b) ways.push({ kind: 'half', n: b });
  if (b === 2) ways.push({ kind: 'twoLess', a });
  if (left === 2) ways.push({ kind: 'countUp', a, b });
  if (a === 10) ways.push({ kind: 'upToTen', b });
  if (a > 10 && b === 9) ways.push({ kind: 'giveOneBack', a });
  if (left - b === 1) ways.push({ kind: 'nearHalf', n: b, by: 1 });
  if (left - b === -1) ways.push({ kind: 'nearHalf', n: b, by: -1 });
  if (a > 10 && b > 6) ways.push({ kind: 'upThroughTen', a, b });
  if (a > 10 && b < 9) ways.push({ kind: 'backThroughTen', a, b });
  if (a < 10) ways.push({ kind: 'thinkPlus', a, b });
  return ways;
}
