import type { Fact } from '../core/fact/fact';
import { pairOf } from '../core/fact/fact-list';
import {
  ageScaling,
  countStepAge,
  countStepMs,
  freshSlowness,
  groupSteps,
  retrieveMs,
  shiftExposures,
} from './assumptions';

/** The chance that a fact met `exposures` times is remembered, not counted. */
export function memoryShare(exposures: number): number {
  return 1 - Math.exp(-exposures / shiftExposures);
}

/** Median think time from memory, ms. */
export function memoryMs(ageYears: number, exposures: number): number {
  const fresh = freshSlowness.share * Math.exp(-exposures / freshSlowness.exposures);
  return retrieveMs * ageScaling(ageYears) * (1 + fresh);
}

/** Median think time by counting, ms. */
export function countingMs(ageYears: number, fact: Fact): number {
  const stepMs = (countStepMs * ageScaling(ageYears)) / ageScaling(countStepAge);
  const each = fact.op === 'mul' || fact.op === 'div' ? stepMs * groupSteps : stepMs;
  return retrieveMs * ageScaling(ageYears) + countSteps(fact) * each;
}

/**
 * Steps of counting: on from the larger by the smaller (Groen & Parkman 1972), down or up to it, group by group. A tie
 * takes one and a rule for 0 and 1 none, as these are answered differently (Campbell & Gunter 2002).
 */
export function countSteps(fact: Fact): number {
  const [x, y] = pairOf(fact);
  const smaller = Math.min(x, y);
  if (smaller <= 1) return 0;
  return x === y ? 1 : smaller;
}
