import type { SittingPlan } from '../record/sat';
import type { Day, Id } from '../record/stamp';
import { seedFor } from './seed';

/** How many numbers are copied before the first timed sheet (design: a practice of five). */
export const practiceLength = 5;

/** Numbers to copy, so that a child has met the way answers are taken before they count. */
export function planPractice(
  child: Id,
  day: Day,
  { takesItself, keepTimes }: Pick<SittingPlan, 'takesItself' | 'keepTimes'>,
): SittingPlan {
  const seed = seedFor(child, day, 'practice', 0);
  return {
    child,
    purpose: 'practice',
    of: null,
    set: null,
    seed,
    prompts: numbersFrom(seed).map((number) => `copy-${number}` as const),
    clock: null,
    takesItself,
    onWrong: 'goOn',
    keepTimes,
  };
}

/** Numbers of one and two digits in turn, each different, from a seed. */
function numbersFrom(seed: number): readonly number[] {
  const start = seed % 8;
  return Array.from({ length: practiceLength }, (_, place) => {
    const digit = 2 + ((start + place * 3) % 8);
    return place % 2 === 0 ? digit : digit * 10 + ((digit + 3) % 10);
  });
}
