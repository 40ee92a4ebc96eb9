import type { Id } from '../core/record/stamp';
import { makeDice } from '../core/sheet/dice';

/** Seeded draws: the same seed draws the same. */
export interface Chance {
  /** From 0 to below 1. */
  unit(): number;
  happens(chance: number): boolean;
  between(least: number, most: number): number;
  normal(): number;
  /** A log-normal factor of median 1; `s` is the spread of its logarithm. */
  factor(s: number): number;
  pick<T>(list: readonly T[]): T | undefined;
  /** An id of the shape that browsers give. */
  id(): Id;
}

const fineness = 2 ** 30;

export function makeChance(seed: number): Chance {
  const dice = makeDice(seed);
  const unit = () => dice.below(fineness) / fineness;
  // Box and Muller; 1 − unit is never 0.
  const normal = () => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit());
  const hex = (digits: number) => Array.from({ length: digits }, () => dice.below(16).toString(16)).join('');
  return {
    unit,
    normal,
    happens: (chance) => unit() < chance,
    between: (least, most) => least + (most - least) * unit(),
    factor: (s) => Math.exp(s * normal()),
    pick: (list) => (list.length === 0 ? undefined : list[dice.below(list.length)]),
    id: () => `${hex(8)}-${hex(4)}-4${hex(3)}-${(8 + dice.below(4)).toString(16)}${hex(3)}-${hex(12)}`,
  };
}
