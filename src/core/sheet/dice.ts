import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Seeded dice: the same seed throws the same numbers on every machine. */
export interface Dice {
  /** A whole number from 0 to below `count`, each as likely. */
  below(count: number): number;
  /** A new list in an order drawn from all orders (Fisher and Yates). */
  shuffled<T>(list: readonly T[]): T[];
}

// The generator's first numbers repeat its seed, so that neighbouring seeds would throw nearly alike.
const thrownAway = 20;

/** Dice for a seed; whole numbers alike in their lowest 32 bits are the same seed. */
export function makeDice(seed: number): Dice {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < thrownAway; i++) generator.next();
  const below = (count: number) => uniformInt(generator, 0, count - 1);
  return {
    below,
    shuffled<T>(list: readonly T[]) {
      const order = [...list];
      for (let last = order.length - 1; last > 0; last--) {
        const at = below(last + 1);
        [order[at], order[last]] = [order[last] as T, order[at] as T];
      }
      return order;
    },
  };
}
