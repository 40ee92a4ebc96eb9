import type { Operation } from '../../core/fact/fact';
import {
  type FactReading,
  type FactState,
  isRightSoFar,
  isUnevenWithClock,
  type NotEnough,
} from '../../readings/facts/fact-reading';
import { operationNames } from '../fact-grid/words';

/** The five states in words, as design names them. */
const stateNames: Readonly<Record<Exclude<FactState, 'notEnough'>, string>> = {
  quick: 'quick',
  slow: 'slow',
  uneven: 'uneven',
  toLearn: 'to learn',
};

/** A fact's state in words; where there is none, what is lacking. */
export function stateName(reading: FactReading): string {
  if (isUnevenWithClock(reading)) return 'uneven with the clock only';
  if (reading.state !== 'notEnough') return stateNames[reading.state];
  if (isRightSoFar(reading)) return 'right so far';
  return lacking[reading.notEnough ?? 'notSure'];
}

const lacking: Readonly<Record<NotEnough, string>> = {
  fewAnswers: 'too few answers',
  oneDay: 'too few days',
  notSure: 'can’t tell yet',
  noTimes: 'right, without times',
};

/** The same where there is little room. */
export function shortName(reading: FactReading): string {
  if (reading.state !== 'notEnough') return stateNames[reading.state];
  if (isRightSoFar(reading)) return 'right so far';
  return lackingInShort[reading.notEnough ?? 'notSure'];
}

const lackingInShort: Readonly<Record<NotEnough, string>> = {
  fewAnswers: 'too few',
  oneDay: 'one day',
  notSure: 'can’t tell',
  noTimes: 'no times',
};

/** What the shapes mean, in the key below the sentences: the name in bold, then what it stands for. */
export const stateMeanings: Readonly<Record<FactState, readonly [name: string, means: string]>> = {
  quick: [stateNames.quick, 'right, and thought of in under about 3\u00a0s'],
  slow: [stateNames.slow, 'right, but it takes longer'],
  uneven: [
    stateNames.uneven,
    'now right and now wrong, or now quick and now slow; answers on hurried days with the clock count too',
  ],
  toLearn: [stateNames.toLearn, 'more often wrong than right'],
  notEnough: ['no word yet', 'for one of the reasons that follow'],
};

/** Why there is no word yet, by the short name in the cell, and what it means. */
export const lackingMeanings: readonly (readonly [name: string, means: string])[] = [
  [lackingInShort.fewAnswers, 'under three answers'],
  [lackingInShort.oneDay, 'all on one day'],
  ['right so far', 'never wrong, but not yet sure, or not clear whether quick or slow'],
  [lackingInShort.notSure, 'the answers don’t agree'],
  [lackingInShort.noTimes, 'right, but not timed'],
];

const apartNames: Readonly<Record<NonNullable<FactReading['apart']>, string>> = {
  tie: 'same numbers',
  zeroOrOne: 'with 0 or 1',
};

const apartCounts: Readonly<Record<NonNullable<FactReading['apart']>, string>> = {
  tie: 'Facts with the same number twice',
  zeroOrOne: 'Facts with 0 or 1',
};

export const factsWords = {
  title: 'Facts',
  nobody: 'No fact has been answered yet.',
  lead: 'Tap a fact for its answers. Facts with a thin double edge have the same number twice, or a 0 or 1 in them: they are answered differently, so read them apart.',
  threeSeconds:
    '“About 3 s” is a habit of classrooms, not a measured border: a child who counts fast gets under it too.',
  notMet: 'never met yet',
  notMetMark: 'A number alone: never met yet.',
  /** Ties and facts with 0 or 1, counted for themselves. */
  countedApart: (kind: NonNullable<FactReading['apart']>, quick: number, of: number) =>
    `${apartCounts[kind]}, counted apart: ${quick} of the ${of} met so far quick and right.`,
  key: 'What the shapes mean, and how many facts have each',
  of: (facts: number) => `(${facts})`,
  grid: (op: Operation) => `${operationNames[op]}: how well each fact is known`,
  table: (op: Operation) => `${operationNames[op]} as a table`,
  /** What is printed in the cell stands first, so that it can be asked for by what is seen. */
  cell: (seen: string, whole: string, state: string, apart: FactReading['apart']) =>
    `${seen}: ${[whole, state, ...(apart ? [apartNames[apart]] : [])].join(', ')}`,
  apart: (apart: FactReading['apart']) => (apart ? apartNames[apart] : ''),
  columns: {
    fact: 'Fact',
    state: 'How well known',
    right: 'Right',
    days: 'Days',
    think: 'Think time',
    last: 'Last on',
    apart: 'Kind',
  },
  right: (right: number, of: number) => `${right} of ${of}`,
  atMost: (time: string) => `${time} at most`,
  close: 'Close',
  way: 'The way shown with it when it is new',
  toolLine: (line: string) => `The tool’s line: “${line}”`,
  noLine: 'The tool has no line for it.',
  ownLine: 'Your own line for it',
  ownHint: (most: number) =>
    `Shown to every child in place of the tool’s, with a plain picture. Up to ${most} signs; six words are enough.`,
  keepLine: 'Keep this line',
  toolBack: 'Use the tool’s line again',
  lineKept: (line: string) => `Kept: “${line}”`,
  lineGone: 'The tool’s line is shown again.',
  lineEmpty: 'Write a line first, or use the tool’s.',
  lineLong: (most: number) => `A line has up to ${most} signs.`,
  history: (whole: string) => `Every answer to ${whole}`,
  historyColumns: {
    day: 'Day',
    given: 'Given',
    outcome: 'Outcome',
    think: 'Think time',
    clock: 'Clock',
    cause: 'Looks like',
  },
  withClock: 'with',
  withoutClock: 'without',
  onRow: 'extra row',
  byRuling: 'right by your ruling',
  older: 'Show older answers',
} as const;
