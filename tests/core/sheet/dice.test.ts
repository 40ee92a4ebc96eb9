import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeDice } from '../../../src/core/sheet/dice';

const seed = fc.integer();

describe('dice', () => {
  test('of one seed throw the same numbers', () => {
    fc.assert(
      fc.property(seed, (value) => {
        const throwAll = () => {
          const dice = makeDice(value);
          return [dice.below(6), dice.shuffled([1, 2, 3, 4, 5]), dice.below(1000)];
        };
        expect(throwAll()).toEqual(throwAll());
      }),
    );
  });

  test('throw every number below the count, and no other', () => {
    fc.assert(
      fc.property(seed, (value) => {
        const dice = makeDice(value);
        const thrown = new Set(Array.from({ length: 200 }, () => dice.below(6)));
        expect([...thrown].toSorted()).toEqual([0, 1, 2, 3, 4, 5]);
      }),
    );
  });

  test('of neighbouring seeds have nothing to do with each other', () => {
    const faces = Array.from({ length: 6000 }, (_, value) => makeDice(value).below(6));
    const stepsUp = faces.filter((face, i) => i > 0 && face === ((faces[i - 1] ?? 0) + 1) % 6).length;
    // 1 in 6 by chance: 1000, standard deviation 29.
    expect(Math.abs(stepsUp - 1000)).toBeLessThan(150);
    for (const face of [0, 1, 2, 3, 4, 5]) {
      expect(Math.abs(faces.filter((other) => other === face).length - 1000)).toBeLessThan(150);
    }
  });
});

describe('a shuffled list', () => {
  test('has what the list has, and leaves the list alone', () => {
    fc.assert(
      fc.property(seed, fc.array(fc.integer()), (value, list) => {
        const before = [...list];
        const shuffled = makeDice(value).shuffled(list);
        expect(shuffled.toSorted((x, y) => x - y)).toEqual(list.toSorted((x, y) => x - y));
        expect(list).toEqual(before);
      }),
    );
  });

  test('comes in each of its orders about as often', () => {
    const counts = new Map<string, number>();
    for (let value = 0; value < 6000; value++) {
      const order = makeDice(value).shuffled(['a', 'b', 'c']).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});
