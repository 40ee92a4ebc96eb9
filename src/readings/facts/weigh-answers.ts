import type { Day } from '../../core/record/stamp';
import type { Answer } from '../child-log/answer';

/** After so many more answers an answer weighs half (our own decision, no source). */
const halfLife = 24;

/** Older answers weigh under a thirtieth. */
const mostWeighed = 120;

const weights = Array.from({ length: mostWeighed }, (_, index) => 0.5 ** (index / halfLife));

/** Answers with the clock and without, of which either kind may speak. */
const mostLookedAt = 3 * mostWeighed;

/** Where so many answers without the clock stand among the newest days, they alone speak. */
const fewestWithout = 3;

/** How many days back from a fact's newest answer they may stand (as far as days are ever set side by side). */
const newestDays = 28;

/** One answer with what it weighs, 1 for the newest. */
export interface Weighed {
  readonly answer: Answer;
  readonly weight: number;
}

/** The answers that speak of a fact, newest first, and whether they are those without the clock alone. */
export interface Speaking {
  readonly answers: readonly Weighed[];
  readonly withoutClock: boolean;
}

/**
 * Weighs one fact's answers, oldest first. What the parent calls a slip of the keys says nothing of the fact. Which
 * answers speak is settled by their days and the clock, never by how they came out.
 */
export function weighAnswers(answers: readonly Answer[]): Speaking {
  const own = ownOf(answers);
  const since = (own.at(-1)?.dayCount ?? 0) - newestDays;
  const without = own.filter(({ withClock }) => !withClock);
  const newest = without.filter(({ dayCount }) => dayCount >= since);
  const withoutClock = newest.length >= fewestWithout && daysOf(newest) > 1;
  return { answers: weighed(withoutClock ? without : own), withoutClock };
}

/** All answers, with the clock and without, for a fact of which those without it alone say nothing sure. */
export function weighAll(answers: readonly Answer[]): Speaking {
  return { answers: weighed(ownOf(answers)), withoutClock: false };
}

function ownOf(answers: readonly Answer[]): readonly Answer[] {
  return answers.slice(-mostLookedAt).filter(({ slip }) => slip !== true);
}

function weighed(answers: readonly Answer[]): readonly Weighed[] {
  const newestFirst = answers.slice(-mostWeighed).reverse();
  return newestFirst.map((answer, index) => ({ answer, weight: weights[index] ?? 0 }));
}

/** On how many days answers in the order of days, or against it, were given. */
export function daysOf(answers: readonly { readonly day: Day }[]): number {
  let days = 0;
  let last: Day | null = null;
  for (const { day } of answers) {
    if (day !== last) days += 1;
    last = day;
  }
  return days;
}
