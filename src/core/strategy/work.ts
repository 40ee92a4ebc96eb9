import type { Strategy } from './strategy';

/** The box that stands for the answer where it is built up. */
const unknown = '□';

/**
 * A strategy written out: a calculation whose value is the fact's answer, or an equation that the answer solves in the
 * place of the box. Worked from left to right, × and ÷ first. Empty where there is no strategy.
 */
export function workOf(strategy: Strategy): string {
  switch (strategy.kind) {
    case 'none':
      return '';
    case 'turnAround':
      return `${strategy.a} ${strategy.sign} ${strategy.b}`;
    case 'noneMore':
    case 'oneLot':
      return `${strategy.n}`;
    case 'oneMore':
      return `${strategy.n} + 1`;
    case 'twoMore':
      return `${strategy.n} + 1 + 1`;
    case 'double':
      return `${strategy.n} + ${strategy.n}`;
    case 'twoFives':
      return `5 + 5 + ${strategy.n - 5} + ${strategy.n - 5}`;
    case 'doubleAndOne':
      return `${strategy.n} + ${strategy.n} + 1`;
    case 'doubleBetween':
      return `${strategy.n} + ${strategy.n}`;
    case 'makesTen':
      return `${strategy.a} + ${strategy.b}`;
    case 'oneUnderTen':
      return `${strategy.a} + ${strategy.b + 1} − 1`;
    case 'tenLessOne':
      return `10 + ${strategy.n} − 1`;
    case 'fillTen':
      return `${strategy.large} + ${10 - strategy.large} + ${strategy.small + strategy.large - 10}`;
    case 'takeNone':
    case 'allForOne':
      return `${strategy.a}`;
    case 'takeAll':
      return `${strategy.a} − ${strategy.a}`;
    case 'oneLess':
      return `${strategy.a} − 1`;
    case 'twoLess':
      return `${strategy.a} − 1 − 1`;
    case 'countUp':
    case 'thinkPlus':
      return `${strategy.b} + ${unknown} = ${strategy.a}`;
    case 'upToTen':
      return `${strategy.b} + ${unknown} = 10`;
    case 'upThroughTen':
      return `${10 - strategy.b} + ${strategy.a - 10}`;
    case 'half':
      return `${2 * strategy.n} ÷ 2`;
    case 'nearHalf':
      return `${2 * strategy.n} ÷ 2 ${strategy.by === 1 ? '+' : '−'} 1`;
    case 'giveOneBack':
      return `${strategy.a} − 10 + 1`;
    case 'backThroughTen':
      return `${strategy.a} − ${strategy.a - 10} − ${strategy.b - (strategy.a - 10)}`;
    case 'noLots':
      return `0 × ${strategy.n}`;
    case 'tenLots':
      return `10 × ${strategy.n}`;
    case 'doubled':
      return strategy.times === 1
        ? `${strategy.n} + ${strategy.n}`
        : `${'2 × '.repeat(strategy.times)}${strategy.n}`;
    case 'halfOfTen':
      return `10 × ${strategy.n} ÷ 2`;
    case 'halveAndDouble':
      return `10 × ${strategy.half}`;
    case 'splitLots':
      return `${lots(strategy.first, strategy.n)} + ${lots(strategy.more, strategy.n)}`;
    case 'lotsLess':
      return `${lots(strategy.of, strategy.n)} − ${lots(strategy.less, strategy.n)}`;
    case 'shareNone':
      return `0 ÷ ${strategy.b}`;
    case 'oneEach':
      return `${strategy.a} ÷ ${strategy.a}`;
    case 'howManyTens':
      return `${strategy.a} ÷ 10`;
    case 'doubleThenTens':
      return `2 × ${strategy.a} ÷ 10`;
    case 'halved':
      return `${strategy.a}${' ÷ 2'.repeat(strategy.times)}`;
    case 'thinkTimes':
      return `${strategy.b} × ${unknown} = ${strategy.a}`;
  }
}

function lots(count: number, n: number): string {
  return count === 1 ? `${n}` : `${count} × ${n}`;
}
