import wilcoxon from '@stdlib/stats-wilcoxon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midRanks } from '../../../src/readings/statistics/ranks';
import { signedRank } from '../../../src/readings/statistics/signed-rank';

const coarse = fc.array(fc.integer({ min: -6, max: 6 }), { minLength: 1, maxLength: 11 });
const fine = fc.uniqueArray(
  fc.integer({ min: 1, max: 10_000 }).chain((size) => fc.constantFrom(size, -size)),
  { minLength: 2, maxLength: 40, selector: Math.abs },
);

/** Every flip of signs written out, ranks as they are. */
function byEnumeration(differences: readonly number[]) {
  const used = differences.filter((difference) => difference !== 0);
  const ranks = midRanks(used.map(Math.abs));
  const seen = ranks.filter((_, index) => (used[index] ?? 0) > 0).reduce((a, b) => a + b, 0);
  let atLeast = 0;
  let atMost = 0;
  const flips = 2 ** used.length;
  for (let flip = 0; flip < flips; flip += 1) {
    const sum = ranks.filter((_, index) => (flip >> index) & 1).reduce((a, b) => a + b, 0);
    if (sum >= seen) atLeast += 1;
    if (sum <= seen) atMost += 1;
  }
  return { pGreater: atLeast / flips, pLess: atMost / flips };
}

describe('signed rank', () => {
  it('counts every flip of signs, ties and zeros too', () => {
    fc.assert(
      fc.property(coarse, (differences) => {
        const { pGreater, pLess } = byEnumeration(differences);
        const test = signedRank(differences);
        expect(test.pGreater).toBeCloseTo(pGreater, 12);
        expect(test.pLess).toBeCloseTo(pLess, 12);
      }),
      { numRuns: 200 },
    );
  });

  it('agrees with the registry library where nothing ties', () => {
    fc.assert(
      fc.property(fine, (differences) => {
        const two = wilcoxon(differences, { exact: true });
        const greater = wilcoxon(differences, { exact: true, alternative: 'greater' });
        const test = signedRank(differences);
        // The library doubles the smaller tail without stopping at 1.
        expect(test.pTwoSided).toBeCloseTo(Math.min(1, two.pValue), 10);
        expect(test.pGreater).toBeCloseTo(greater.pValue, 10);
      }),
    );
  });

  it('turns round with the signs', () => {
    fc.assert(
      fc.property(coarse, (differences) => {
        const test = signedRank(differences);
        const turned = signedRank(differences.map((difference) => -difference));
        expect(turned.pGreater).toBeCloseTo(test.pLess, 12);
        expect(turned.pTwoSided).toBeCloseTo(test.pTwoSided, 12);
      }),
    );
  });

  it('says nothing where every difference is 0', () => {
    expect(signedRank([0, 0, 0])).toMatchObject({ pairs: 0, v: 0, pTwoSided: 1 });
    expect(signedRank([])).toMatchObject({ pairs: 0, pTwoSided: 1 });
  });

  it('is near the exact value where it goes over to the normal curve', () => {
    const differences = Array.from({ length: 150 }, (_, index) => (index % 5 < 2 ? -1 : 1) * (index + 1));
    const exact = signedRank(differences);
    const nearly = signedRank([...differences, 0.5]);
    expect(exact.exact).toBe(true);
    expect(nearly.exact).toBe(false);
    expect(Math.abs(Math.log(nearly.pTwoSided / exact.pTwoSided))).toBeLessThan(0.05);
  });
});

it('ranks are shared by equal values and add up to n(n + 1)/2', () => {
  expect(midRanks([3, 1, 3, 2])).toEqual([3.5, 1, 3.5, 2]);
  fc.assert(
    fc.property(coarse, (values) => {
      const total = midRanks(values).reduce((a, b) => a + b, 0);
      expect(total).toBe((values.length * (values.length + 1)) / 2);
    }),
  );
});
