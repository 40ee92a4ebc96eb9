import { describe, expect, test } from 'vitest';
import { makeChance } from '../../src/demo/chance';
import { createClockDraw } from '../../src/demo/clock-draw';

describe('chance', () => {
  test('draws the same from the same seed and other things from another', () => {
    const draw = (seed: number) => {
      const chance = makeChance(seed);
      return [chance.unit(), chance.normal(), chance.id(), chance.pick(['a', 'b', 'c'])];
    };
    expect(draw(4)).toEqual(draw(4));
    expect(draw(4)).not.toEqual(draw(5));
  });

  test('happens as often as it should, and never or always at the ends', () => {
    const chance = makeChance(6);
    const often = (p: number) =>
      Array.from({ length: 10_000 }, () => chance.happens(p)).filter(Boolean).length;
    expect(often(0)).toBe(0);
    expect(often(1)).toBe(10_000);
    // Four standard errors of a binomial share.
    expect(Math.abs(often(0.3) / 10_000 - 0.3)).toBeLessThan(4 * Math.sqrt((0.3 * 0.7) / 10_000));
  });

  test('gives ids of the shape that browsers give, none twice', () => {
    const chance = makeChance(7);
    const ids = Array.from({ length: 1000 }, () => chance.id());
    expect(
      ids.every((id) => /^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/.test(id)),
    ).toBe(true);
    expect(new Set(ids).size).toBe(1000);
  });

  test('picks nothing from nothing', () => {
    expect(makeChance(8).pick([])).toBeUndefined();
  });
});

test('of every two days drawn one has the clock', () => {
  for (let seed = 0; seed < 20; seed += 1) {
    const draw = createClockDraw(makeChance(seed));
    const days = Array.from({ length: 20 }, () => draw.next());
    for (let pair = 0; pair < days.length; pair += 2) expect(days[pair]).toBe(!days[pair + 1]);
  }
});
