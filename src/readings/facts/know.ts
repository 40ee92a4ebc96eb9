import { type Beta, betaBelowEach, betaMean, betaQuantile } from '../statistics/beta';
import type { Interval } from '../statistics/interval';
import { type Tally, withAnswers } from '../statistics/pooled-prior';

/** How sure it is, by the answers, that a fact is known, is mixed, is to be learned; 0 to 1. */
export interface Knowing {
  readonly known: number;
  readonly mixed: number;
  readonly toLearn: number;
}

/** Right in more than 7 of 10 answers is known, in fewer than half is to be learned (our own decision, no source). */
const bounds = { known: 0.7, toLearn: 0.5, mixedFrom: 0.25, mixedTo: 0.85 } as const;

/** From so many answers on a fact speaks for itself (our own decision, no source). */
export const manyAnswers = 12;

/** Says nothing beforehand: every share is as likely. */
const flat: Beta = { right: 1, wrong: 1 };

/** What a share of right answers under one prior makes of a fact. */
function knowingUnder(prior: Beta, own: Tally): Knowing {
  const below = betaBelowEach(withAnswers(prior, own));
  return {
    known: 1 - below(bounds.known),
    mixed: below(bounds.mixedTo) - below(bounds.mixedFrom),
    toLearn: below(bounds.toLearn),
  };
}

/**
 * What own answers make of a fact. The set's answers (`pool`) and the turn-around's may take sureness away, never give
 * any: the least of what each of them would say holds. Many `answers` of its own say alone that a fact is not known, and
 * where none was wrong that it is.
 */
export function knowing(own: Tally, pool: Beta, turnAround: Tally, answers: number): Knowing {
  const beside = withAnswers(flat, { right: turnAround.right / 4, of: turnAround.of / 4 });
  const views = [flat, pool, beside].map((prior) => knowingUnder(prior, own));
  const least = (key: keyof Knowing) => Math.min(...views.map((view) => view[key]));
  const isMany = answers >= manyAnswers;
  const { mixed, toLearn } = isMany
    ? knowingUnder(flat, own)
    : { mixed: least('mixed'), toLearn: least('toLearn') };
  const isAllRight = own.right === own.of;
  return { known: isMany && isAllRight ? knowingUnder(flat, own).known : least('known'), mixed, toLearn };
}

/** To within a ten-thousandth. */
const halvings = 14;

/** The chance of a right answer with its 95 % interval, the set's answers taken into account. */
export function accuracyOf(own: Tally, pool: Beta): { readonly share: number; readonly interval: Interval } {
  const of = withAnswers(pool, own);
  return {
    share: betaMean(of),
    interval: { low: betaQuantile(of, 0.025, halvings), high: betaQuantile(of, 0.975, halvings) },
  };
}
