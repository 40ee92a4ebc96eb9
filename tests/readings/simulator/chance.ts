import { makeDice } from '../../../src/core/sheet/dice';

/** Seeded draws for made children. */
export interface Chance {
  /** From 0 to below 1. */
  unit(): number;
  below(count: number): number;
  happens(share: number): boolean;
  between(least: number, most: number): number;
  /** A log-normal factor of median 1. */
  factor(s: number): number;
  shuffled<T>(list: readonly T[]): T[];
}

export function makeChance(seed: number): Chance {
  const dice = makeDice(seed);
  const unit = () => dice.below(2 ** 30) / 2 ** 30;
  const normal = () => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit());
  return {
    unit,
    below: dice.below,
    happens: (share) => unit() < share,
    between: (least, most) => least + (most - least) * unit(),
    factor: (s) => Math.exp(s * normal()),
    shuffled: dice.shuffled,
  };
}
