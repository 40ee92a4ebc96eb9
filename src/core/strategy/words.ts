import type { Strategy } from './strategy';

const times = { 1: '', 2: ', double again', 3: ' three times' } as const;
const halvings = { 1: 'half', 2: 'half of half', 3: 'half, three times,' } as const;
const names = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** `one 7`, `five 7s`. */
function lots(count: number, n: number): string {
  return `${names[count] ?? count} ${n}${count === 1 ? '' : 's'}`;
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1) + (text.endsWith('?') ? '' : '.');
}

/** A strategy as a line for the child, at most six words; `null` where there is none. */
export function strategyLine(strategy: Strategy): string | null {
  const line = lineOf(strategy);
  return line === null ? null : sentence(line);
}

function lineOf(strategy: Strategy): string | null {
  switch (strategy.kind) {
    case 'none':
      return null;
    case 'turnAround':
      return `the same as ${strategy.a} ${strategy.sign} ${strategy.b}`;
    case 'noneMore':
      return `nothing more: it stays ${strategy.n}`;
    case 'oneMore':
      return `one more than ${strategy.n}`;
    case 'twoMore':
      return `two more than ${strategy.n}`;
    case 'double':
      return `two rows of ${strategy.n}`;
    case 'twoFives':
      return `two fives, then ${strategy.n - 5} and ${strategy.n - 5}`;
    case 'doubleAndOne':
      return `double ${strategy.n} and one more`;
    case 'doubleBetween':
      return `level them: double ${strategy.n}`;
    case 'makesTen':
      return `${strategy.a} and ${strategy.b} fill a ten`;
    case 'oneUnderTen':
      return `one less than ${strategy.a} + ${strategy.b + 1}`;
    case 'tenLessOne':
      return `ten and ${strategy.n}, less one`;
    case 'fillTen':
      return `${strategy.large} to ten, then ${strategy.small + strategy.large - 10} more`;
    case 'takeNone':
      return `nothing goes: it stays ${strategy.a}`;
    case 'takeAll':
      return 'all of it goes';
    case 'oneLess':
      return `one less than ${strategy.a}`;
    case 'twoLess':
      return `two less than ${strategy.a}`;
    case 'countUp':
      return `count from ${strategy.b} to ${strategy.a}`;
    case 'thinkPlus':
      return `${strategy.b} and what make ${strategy.a}?`;
    case 'upToTen':
      return `${strategy.b} and what make ten?`;
    case 'upThroughTen':
      return `${strategy.b} to ten, then ${strategy.a - 10} more`;
    case 'half':
      return `half of ${2 * strategy.n}`;
    case 'nearHalf':
      return `half of ${2 * strategy.n}, ${strategy.by === 1 ? 'and one' : 'less one'}`;
    case 'giveOneBack':
      return 'take ten, give one back';
    case 'backThroughTen':
      return `back to ten, then ${strategy.b - (strategy.a - 10)}`;
    case 'noLots':
      return 'no lots of it: nothing';
    case 'oneLot':
      return `just one ${strategy.n}`;
    case 'tenLots':
      return lots(10, strategy.n);
    case 'doubled':
      return `double ${strategy.n}${times[strategy.times]}`;
    case 'halfOfTen':
      return `half of ${lots(10, strategy.n)}`;
    case 'halveAndDouble':
      return `halve ${2 * strategy.half}: ${lots(10, strategy.half)}`;
    case 'splitLots':
      return `${lots(strategy.first, strategy.n)} and ${lots(strategy.more, strategy.n)}`;
    case 'lotsLess':
      return `${lots(strategy.of, strategy.n)}, less ${lots(strategy.less, strategy.n)}`;
    case 'shareNone':
      return 'nothing to share out';
    case 'oneEach':
      return 'one for each';
    case 'allForOne':
      return `one gets all ${strategy.a}`;
    case 'howManyTens':
      return `how many tens in ${strategy.a}?`;
    case 'doubleThenTens':
      return `double ${strategy.a}, count its tens`;
    case 'halved':
      return `${halvings[strategy.times]} of ${strategy.a}`;
    case 'thinkTimes':
      return `${strategy.b} times what makes ${strategy.a}?`;
  }
}
