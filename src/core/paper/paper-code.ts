import type { OwnSet } from '../household/household';
import type { PaperShape } from '../record/household-record';
import type { Id } from '../record/stamp';
import { checkDigit } from './check-digit';
import { setNumber, setOfNumber } from './set-number';

/** What a sheet on paper is made from; where `shape.hasKept`, kept facts besides. */
export interface PaperSheet {
  readonly set: Id;
  /** From 0 to below `paperSeeds`. */
  readonly seed: number;
  readonly shape: PaperShape;
}

/** How many seeds there are on paper: four digits. */
export const paperSeeds = 10_000;

const codeLength = 10;
const rowsMost = 20;

/** Why a code leads to no sheet. */
export type CodeFault = 'notDigits' | 'length' | 'check' | 'noSet';

/**
 * The code at the foot: four digits of the seed, three of the set, two of the shape, one to check the others by. It is
 * printed in groups, `4829 103 417`, the seed first, so that four digits are mostly enough to find a sheet.
 */
export function codeOf({ set, seed, shape }: PaperSheet): string {
  const digits = `${padded(seed, 4)}${padded(setNumber(set), 3)}${padded(shapeNumber(shape), 2)}`;
  return grouped(digits + checkDigit(digits));
}

/** The sheet a code stands for, however it is spaced; or what is wrong with it. */
export function readCode(text: string, ownSets: readonly Pick<OwnSet, 'id'>[]): PaperSheet | CodeFault {
  const digits = bareCode(text);
  if (/\D/.test(digits)) return 'notDigits';
  if (digits.length !== codeLength) return 'length';
  if (checkDigit(digits) !== '0') return 'check';
  const set = setOfNumber(Number(digits.slice(4, 7)), ownSets);
  if (set === null) return 'noSet';
  return { set, seed: Number(digits.slice(0, 4)), shape: shapeOf(Number(digits.slice(7, 9))) };
}

/** A code without its spaces and dots. */
export function bareCode(text: string): string {
  return text.replace(/[\s.·-]+/g, '');
}

function shapeNumber({ length, layout, hasKept }: PaperShape): number {
  return length / 5 - 1 + rowsMost * (Number(layout === 'stacked') + 2 * Number(hasKept));
}

function shapeOf(number: number): PaperShape {
  const kind = Math.floor(number / rowsMost);
  return {
    length: ((number % rowsMost) + 1) * 5,
    layout: kind % 2 === 1 ? 'stacked' : 'across',
    hasKept: kind >= 2,
  };
}

function padded(number: number, digits: number): string {
  return String(number).padStart(digits, '0');
}

function grouped(digits: string): string {
  return [digits.slice(0, 4), digits.slice(4, 7), digits.slice(7)].join(' ');
}
