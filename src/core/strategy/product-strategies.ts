import type { ProductStrategy, QuotientStrategy } from './strategy';

/** Numbers of lots, the easiest to work with first. */
const easiest: readonly number[] = [0, 1, 10, 2, 5, 9, 4, 3, 11, 6, 12, 8, 7];

/** The ways to a × b, for numbers to 12, best first; empty for others. */
export function productStrategies(a: number, b: number): readonly ProductStrategy[] {
  if (a > 12 || b > 12) return [];
  const ways = a === b ? waysOf(a, b) : [...byEase(a, b).flatMap(([lots, n]) => waysOf(lots, n))];
  return easiest.indexOf(Math.min(a, b)) < 2 ? ways.slice(0, 1) : [...ways, ...squareAndOne(a, b)];
}

function byEase(a: number, b: number): readonly (readonly [lots: number, n: number])[] {
  return easiest.indexOf(a) <= easiest.indexOf(b)
    ? [
        [a, b],
        [b, a],
      ]
    : [
        [b, a],
        [a, b],
      ];
}

function waysOf(lots: number, n: number): readonly ProductStrategy[] {
  const split = (first: number): ProductStrategy => ({ kind: 'splitLots', n, first, more: lots - first });
  switch (lots) {
    case 0:
      return [{ kind: 'noLots', n }];
    case 1:
      return [{ kind: 'oneLot', n }];
    case 2:
      return [{ kind: 'doubled', n, times: 1 }];
    case 3:
      return [split(2)];
    case 4:
      return [{ kind: 'doubled', n, times: 2 }];
    case 5:
      // Ten lots of 5 say it already; halved and doubled, 5 lots of 10 would come back to themselves.
      if (n === 10) return [];
      return n % 2 === 0
        ? [
            { kind: 'halveAndDouble', half: n / 2 },
            { kind: 'halfOfTen', n },
          ]
        : [{ kind: 'halfOfTen', n }];
    case 8:
      return [
        { kind: 'doubled', n, times: 3 },
        { kind: 'lotsLess', n, of: 10, less: 2 },
      ];
    case 9:
      return [{ kind: 'lotsLess', n, of: 10, less: 1 }];
    case 10:
      return [{ kind: 'tenLots', n }];
    default:
      return [split(lots > 10 ? 10 : 5)];
  }
}

/** 7 × 8 is 7 × 7 and one 7 more; from 5 × 5 and 10 × 10 the easy lots lead to the same. */
function squareAndOne(a: number, b: number): readonly ProductStrategy[] {
  const n = Math.min(a, b);
  const isNear = Math.abs(a - b) === 1 && n >= 3 && n !== 5 && n !== 10;
  return isNear ? [{ kind: 'splitLots', n, first: n, more: 1 }] : [];
}

/** The ways to a ÷ b, for what products to 12 × 12 take back, best first; empty for others. */
export function quotientStrategies(a: number, b: number): readonly QuotientStrategy[] {
  const each = a / b;
  if (b < 1 || b > 12 || each > 12 || !Number.isInteger(each)) return [];
  if (a === 0) return [{ kind: 'shareNone', b }];
  if (b === 1) return [{ kind: 'allForOne', a }];
  if (each === 1) return [{ kind: 'oneEach', a }];
  const think: QuotientStrategy = { kind: 'thinkTimes', a, b };
  switch (b) {
    case 2:
      return [{ kind: 'halved', a, times: 1 }, think];
    case 4:
      return [think, { kind: 'halved', a, times: 2 }];
    case 5:
      return [{ kind: 'doubleThenTens', a }, think];
    case 8:
      return [think, { kind: 'halved', a, times: 3 }];
    case 10:
      return [{ kind: 'howManyTens', a }, think];
    default:
      return [think];
  }
}
