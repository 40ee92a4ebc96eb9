import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeDice } from '../../../src/core/sheet/dice';
import { mostPairsCounted, signFlip } from '../../../src/readings/statistics/sign-flip';

const dice = (seed = 1) => makeDice(seed);

function byEnumeration(differences: readonly number[]) {
  const seen = differences.reduce((a, b) => a + b, 0);
  const flips = 2 ** differences.length;
  let greater = 0;
  let beyond = 0;
  for (let flip = 0; flip < flips; flip += 1) {
    const sum = differences.reduce((a, b, index) => a + ((flip >> index) & 1 ? b : -b), 0);
    if (sum >= seen) greater += 1;
    if (Math.abs(sum) >= Math.abs(seen)) beyond += 1;
  }
  return { pGreater: greater / flips, pTwoSided: beyond / flips };
}

describe('flips of signs', () => {
  it('counts them all, ties and zeros too', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -9, max: 9 }), { maxLength: 12 }), (differences) => {
        expect(signFlip(differences, dice())).toMatchObject(byEnumeration(differences));
      }),
      { numRuns: 300 },
    );
  });

  it('takes tenths that add up in another order for the same sum', () => {
    const differences = [0.1, 0.2, 0.3, -0.6, 0.7, 0.1];
    const tenths = differences.map((difference) => Math.round(difference * 10));
    expect(signFlip(differences, dice())).toMatchObject(byEnumeration(tenths));
  });

  it('adds its two tails up to one and the chance of the very sum', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -9, max: 9 }), { maxLength: 20 }), (differences) => {
        const test = signFlip(differences, dice());
        expect(test.pGreater + test.pLess).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('counts the most pairs it counts in under a second', () => {
    const differences = Array.from({ length: mostPairsCounted }, (_, index) => Math.sin(index * 3) + 0.3);
    const test = signFlip(differences, dice());
    expect(test.exact).toBe(true);
    expect(test.pTwoSided).toBeGreaterThan(0);
  }, 1000);

  it('draws flips beyond that: near the exact value, the same from the same dice, never 0', () => {
    const shared = Array.from({ length: mostPairsCounted }, (_, index) => Math.sin(index * 3) + 0.3);
    const exact = signFlip(shared, dice());
    // A pair without a difference changes no sum, so the exact value stays true one pair further on.
    const drawn = signFlip([...shared, 0], dice(7));
    expect(drawn.exact).toBe(false);
    expect(Math.abs(drawn.pTwoSided - exact.pTwoSided)).toBeLessThan(0.01);
    expect(signFlip([...shared, 0], dice(7))).toEqual(drawn);
    const certain = signFlip(
      Array.from({ length: 60 }, () => 1),
      dice(),
    );
    expect(certain.pGreater).toBeGreaterThan(0);
    expect(certain.pGreater).toBeLessThan(0.001);
  });
});
