import type { Fact } from '../../../src/core/fact/fact';
import { pairOf } from '../../../src/core/fact/fact-list';

/** Kail 1991, from memory: how many times as long a speeded task takes at an age. */
export const ageScaling = (years: number): number => 1 + 5.16 * Math.exp(-0.21 * years);

/** What one step of counting costs a seven-year-old, ms (Groen & Parkman 1972; Ashcraft & Stazyk 1981). */
const stepAtSevenMs = 400;

/** A grown-up's time to remember, hand left out, ms; and the spread of either way. Our own figures. */
const rememberMs = 450;
export const spreadOf = { remembered: 0.28, counted: 0.38 } as const;

/** Exposures after which e⁻¹ is still counted: about 60 for a complete shift (Rickard 1997). */
const shiftBy = 17;

/** Chance that a fact met so often is remembered. */
export const rememberedShare = (exposures: number): number => 1 - Math.exp(-exposures / shiftBy);

/** Steps of counting: the smaller number, one for a tie, none where a rule for 0 and 1 does. */
export function stepsOf(fact: Fact): number {
  const [x, y] = pairOf(fact);
  const smaller = Math.min(x, y);
  if (smaller <= 1) return 0;
  return x === y ? 1 : smaller;
}

/** Median think time when remembered, and when counted; ms. */
export function thinkMedians(fact: Fact, years: number): { remembered: number; counted: number } {
  const remembered = rememberMs * ageScaling(years);
  const each = (stepAtSevenMs * ageScaling(years)) / ageScaling(7);
  const many = fact.op === 'mul' || fact.op === 'div' ? 2 : 1;
  return { remembered, counted: remembered + stepsOf(fact) * each * many };
}
