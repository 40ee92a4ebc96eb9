import type { CopyId } from '../fact/prompt';
import { daysBetween } from '../memory/memory-strength';
import type { Sat } from '../record/sat';
import type { Day } from '../record/stamp';
import { makeDice } from '../sheet/dice';
import type { Hands } from '../summary/summary';

/** Copies left out at a round's start, while the hands find the keys, and those of each digit count that remain. */
const copies = { warmUp: 3, ofEach: 5 } as const;

/** How many numbers one part of the hand-time round has: two parts together hold ten copies of each digit count. */
export const copyRoundLength = copies.warmUp + 2 * copies.ofEach;

/** Parts at first, and days until hands are measured again: about a month (our own decision). */
const partsAtFirst = 2;
const daysUntilAgain = 28;

/**
 * Whether these hands have numbers to copy: two short parts at first, then one about monthly, one part at a time.
 * `null`: hands nobody has seen, of which nothing is known yet.
 */
export function isCopyRoundDue(hands: Pick<Hands, 'copied' | 'copiedOn'> | null, today: Day): boolean {
  if (!hands || hands.copiedOn === null) return true;
  return hands.copied < partsAtFirst || daysBetween(hands.copiedOn, today) >= daysUntilAgain;
}

/** The numbers of one part, from a seed: those for the hands to warm up, then as many of one digit as of two. */
export function copyNumbers(seed: number): readonly CopyId[] {
  const dice = makeDice(seed);
  const ones = dice.shuffled(range(1, 9));
  const twos = dice.shuffled(range(10, 98));
  const warmUp = [ones[0], twos[0], twos[1]];
  const rest = dice.shuffled([...ones.slice(1, 1 + copies.ofEach), ...twos.slice(2, 2 + copies.ofEach)]);
  return [...warmUp, ...rest].flatMap((number) => (number === undefined ? [] : `copy-${number}`)) as CopyId[];
}

/** Whether a sitting is a part of the hand-time round and no short practice. */
export function isCopyRound({ purpose, prompts }: Pick<Sat, 'purpose' | 'prompts'>): boolean {
  return purpose === 'practice' && prompts.length === copyRoundLength;
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}
