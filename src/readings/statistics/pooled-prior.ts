import { sum } from 'simple-statistics';
import { type Beta, logBeta } from './beta';

/** Answers to one fact: how many were right out of how many; need not be whole where answers are weighted. */
export interface Tally {
  readonly right: number;
  readonly of: number;
}

/** The strength of a pooled prior, in answers, stays between these: our own decision, no source. */
export const priorStrength = { least: 2, most: 40 } as const;

const stepsTried = 60;

/**
 * What the answers of a whole set say of a fact not asked yet: a beta prior whose mean is the pooled share
 * (half an answer of each kind added, so that it is never 0 or 1) and whose strength makes the tallies
 * likeliest (beta-binomial, empirical Bayes; Efron & Morris 1975 for the idea). Without answers: mean ½.
 */
export function pooledPrior(tallies: readonly Tally[]): Beta {
  const asked = tallies.filter(({ of }) => of > 0);
  const mean = (sum(asked.map(({ right }) => right)) + 0.5) / (sum(asked.map(({ of }) => of)) + 1);
  if (asked.length < 2) return betaOf(mean, priorStrength.least);
  let best = { strength: priorStrength.least as number, likelihood: Number.NEGATIVE_INFINITY };
  const ratio = priorStrength.most / priorStrength.least;
  for (let step = 0; step <= stepsTried; step += 1) {
    const strength = priorStrength.least * ratio ** (step / stepsTried);
    const likelihood = logLikelihood(asked, betaOf(mean, strength));
    if (likelihood > best.likelihood) best = { strength, likelihood };
  }
  return betaOf(mean, best.strength);
}

/** The prior with one fact's own answers added. */
export function withAnswers(prior: Beta, { right, of }: Tally): Beta {
  return { right: prior.right + right, wrong: prior.wrong + of - right };
}

function betaOf(mean: number, strength: number): Beta {
  return { right: mean * strength, wrong: (1 - mean) * strength };
}

function logLikelihood(tallies: readonly Tally[], prior: Beta): number {
  const each = logBeta(prior);
  return sum(tallies.map((tally) => logBeta(withAnswers(prior, tally)) - each));
}
