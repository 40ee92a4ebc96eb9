import type { Fact, FactId } from '../fact/fact';
import { knownFact } from '../fact/fact-list';
import { factStrength } from '../memory/fact-strength';
import { memoryStrength, recallTime } from '../memory/memory-strength';
import type { Day } from '../record/stamp';
import { arrange } from '../sheet/arrange';
import { type Dice, makeDice } from '../sheet/dice';
import type { FactSummary, Summary } from '../summary/summary';

/** What a look-back sheet is made from. */
export interface LookBackOrder {
  readonly today: Day;
  /** The facts of all kept sets, and those the parent ticked. */
  readonly kept: readonly FactId[];
  readonly facts: Summary['facts'];
  /** In facts: a multiple of five from 5 to 100. */
  readonly length: number;
  readonly seed: number;
}

/**
 * The facts of a look-back sheet: drawn from the kept ones, each once before any comes twice, the likelier the more it
 * is thought to have faded; the same order always gives the same sheet. `null` where there is nothing kept.
 */
export function buildLookBack({ today, kept, facts, length, seed }: LookBackOrder): readonly FactId[] | null {
  const dice = makeDice(seed);
  const pool = [...new Set(kept)].flatMap((fact) => knownFact(fact) ?? []);
  if (pool.length === 0) return null;
  const drawn: Fact[] = [];
  while (drawn.length < length) {
    const order = drawByWeight(pool, ({ id }) => fading(facts.get(id), today), dice);
    drawn.push(...order.slice(0, length - drawn.length));
  }
  return arrange(drawn, dice).facts.map(({ id }) => id);
}

/**
 * How much a fact weighs in the draw: the time it would take to bring back, e^−B, so that one held half as strongly is
 * drawn twice as readily. One answered but never right at first try goes before all others; one nobody has asked yet
 * weighs as if it had been right once, a month ago (our own decisions).
 */
function fading(fact: FactSummary | undefined, today: Day): number {
  const strength = fact ? factStrength(fact, today) : memoryStrength([unaskedDays]);
  return recallTime(1, strength);
}

const unaskedDays = 30;

/** How finely the dice divide a chance. */
const fine = 2 ** 30;

/**
 * A list in an order drawn by weight, without putting back: by −ln u / weight, u even from 0 to 1 (Efraimidis & Spirakis
 * 2006, from memory). Where weights are endless the dice alone decide.
 */
function drawByWeight<T>(list: readonly T[], weightOf: (one: T) => number, dice: Dice): readonly T[] {
  return list
    .map((one) => ({ one, weight: weightOf(one), waits: -Math.log((1 + dice.below(fine)) / (1 + fine)) }))
    .toSorted((x, y) => x.waits / x.weight - y.waits / y.weight || x.waits - y.waits)
    .map(({ one }) => one);
}
