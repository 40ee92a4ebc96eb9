import type { Fact } from '../fact/fact';
import type { Strategy } from './strategy';

/** How dots look: of the first kind, of the other, or taken away (an outline, so that never colour alone tells). */
export type Look = 'one' | 'other' | 'gone';

/** Dots, rows or columns that look alike. */
export interface Part {
  readonly count: number;
  readonly look: Look;
}

/** Dots in frames of ten, filled one after another; dots in rows; or an array, a dot gone or other where its row or column is. */
export type Picture =
  | { readonly what: 'frames'; readonly parts: readonly Part[] }
  | { readonly what: 'rows'; readonly rows: readonly (readonly Part[])[] }
  | { readonly what: 'array'; readonly rows: readonly Part[]; readonly columns: readonly Part[] };

const one = (count: number): Part => ({ count, look: 'one' });
const other = (count: number): Part => ({ count, look: 'other' });
const gone = (count: number): Part => ({ count, look: 'gone' });

/** The picture of a fact as a strategy sees it; `null` where there is nothing to draw. */
export function pictureOf(strategy: Strategy, fact: Fact): Picture | null {
  if (strategy.kind === 'none') return null;
  const picture = sumPicture(strategy, fact) ?? arrayPicture(strategy, fact);
  return hasDots(picture) ? withoutEmpty(picture) : null;
}

function sumPicture(strategy: Strategy, { op, a, b, answer }: Fact): Picture | null {
  if (op !== 'add' && op !== 'sub') return null;
  switch (strategy.kind) {
    case 'double':
      return { what: 'rows', rows: [[one(strategy.n)], [other(strategy.n)]] };
    case 'twoFives': {
      const five = [one(5), other(strategy.n - 5)];
      return { what: 'rows', rows: [five, five] };
    }
    case 'doubleAndOne':
      return { what: 'rows', rows: [[one(strategy.n)], [one(strategy.n), other(1)]] };
    case 'doubleBetween':
      return {
        what: 'rows',
        rows: [
          [one(strategy.n - 1), other(1)],
          [one(strategy.n), gone(1)],
        ],
      };
    case 'oneUnderTen':
      return { what: 'frames', parts: [one(strategy.a), other(strategy.b), gone(1)] };
    case 'tenLessOne':
      return { what: 'frames', parts: [one(9), gone(1), other(strategy.n)] };
    case 'half':
      return { what: 'rows', rows: [[one(strategy.n)], [gone(strategy.n)]] };
    case 'nearHalf':
      return strategy.by === 1
        ? { what: 'rows', rows: [[one(strategy.n), other(1)], [gone(strategy.n)]] }
        : { what: 'rows', rows: [[one(strategy.n - 1)], [gone(strategy.n)]] };
    case 'giveOneBack':
      return { what: 'frames', parts: [gone(9), other(1), one(strategy.a - 10)] };
    case 'countUp':
    case 'thinkPlus':
    case 'upToTen':
    case 'upThroughTen':
      return { what: 'frames', parts: [one(b), other(answer)] };
    default:
      return op === 'add'
        ? { what: 'frames', parts: [one(Math.max(a, b)), other(Math.min(a, b))] }
        : { what: 'frames', parts: [one(answer), gone(b)] };
  }
}

/** Lots are rows: of × the strategy's own, of ÷ as many as the divisor, so that the answer is a row's length. */
function arrayPicture(strategy: Strategy, { op, a, b, answer }: Fact): Picture {
  const array = (columns: number, ...rows: readonly Part[]): Picture => {
    return { what: 'array', rows, columns: [one(columns)] };
  };
  switch (strategy.kind) {
    case 'noLots':
    case 'oneLot':
      return array(strategy.n, one(strategy.kind === 'oneLot' ? 1 : 0));
    case 'tenLots':
      return array(strategy.n, one(10));
    case 'doubled': {
      const half = 2 ** (strategy.times - 1);
      return array(strategy.n, one(half), other(half));
    }
    case 'halfOfTen':
      return array(strategy.n, one(5), gone(5));
    case 'halveAndDouble':
      return { what: 'array', rows: [one(5)], columns: [one(strategy.half), other(strategy.half)] };
    case 'splitLots':
      return array(strategy.n, one(strategy.first), other(strategy.more));
    case 'lotsLess':
      return array(strategy.n, one(strategy.of - strategy.less), gone(strategy.less));
    case 'halved':
      return array(answer, one(b / 2), other(b / 2));
    case 'doubleThenTens':
      return array(answer, one(5), gone(5));
    default:
      return op === 'div' ? array(answer, one(b)) : array(b, one(a));
  }
}

function hasDots(picture: Picture): boolean {
  const total = (parts: readonly Part[]) => parts.reduce((sum, { count }) => sum + count, 0);
  switch (picture.what) {
    case 'frames':
      return total(picture.parts) > 0;
    case 'rows':
      return picture.rows.some((row) => total(row) > 0);
    case 'array':
      return total(picture.rows) * total(picture.columns) > 0;
  }
}

function withoutEmpty(picture: Picture): Picture {
  const kept = (parts: readonly Part[]) => parts.filter(({ count }) => count > 0);
  switch (picture.what) {
    case 'frames':
      return { ...picture, parts: kept(picture.parts) };
    case 'rows':
      return { ...picture, rows: picture.rows.map(kept) };
    case 'array':
      return { ...picture, rows: kept(picture.rows), columns: kept(picture.columns) };
  }
}
