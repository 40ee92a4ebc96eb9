import type { Operation } from '../../core/fact/fact';
import { signs } from '../../core/fact/written';

/** What a mark on the grid means: facts known already, or facts picked for a set. */
export interface GridWords {
  readonly marked: string;
  readonly unmarked: string;
}

export const knownWords: GridWords = { marked: 'known', unmarked: 'not known' };
export const pickWords: GridWords = { marked: 'in the set', unmarked: 'not in the set' };

export const operationNames: Record<Operation, string> = {
  add: 'Addition',
  sub: 'Subtraction',
  mul: 'Multiplication',
  div: 'Division',
};

export const gridWords = {
  all: 'all',
  which: 'Operation',
  toTwelve: 'Up to the 12s',
  whole: (op: Operation, marked: number, of: number, words: GridWords) =>
    `All of ${operationNames[op].toLowerCase()}: ${marked} of ${of} ${words.marked}`,
  line: (says: string, marked: number, of: number, words: GridWords) =>
    `Everything with ${says}: ${marked} of ${of} ${words.marked}`,
  grid: (op: Operation, words: GridWords) => `${operationNames[op]}: facts ${words.marked}`,
  turned: (op: Operation) =>
    `And the other way round: 0\u00a0${signs[op]}\u00a07 with 7\u00a0${signs[op]}\u00a00`,
  hint: 'Tap a fact, or the head of a row or column for all of it. With a keyboard: arrows to move, space to mark.',
  count: (marked: number, of: number, words: GridWords) => `${marked} of ${of} facts ${words.marked}.`,
} as const;
