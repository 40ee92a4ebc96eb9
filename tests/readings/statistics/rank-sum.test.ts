import fc from 'fast-check';
import { wilcoxonRankSum } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { rankSum } from '../../../src/readings/statistics/rank-sum';
import { midRanks } from '../../../src/readings/statistics/ranks';

const group = fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 1, maxLength: 6 });

/** Every choice of the first group's ranks written out. */
function byEnumeration(first: readonly number[], second: readonly number[]) {
  const ranks = midRanks([...first, ...second]);
  const seen = ranks.slice(0, first.length).reduce((a, b) => a + b, 0);
  let [all, less, greater] = [0, 0, 0];
  for (let choice = 0; choice < 2 ** ranks.length; choice += 1) {
    const chosen = ranks.filter((_, index) => (choice >> index) & 1);
    if (chosen.length !== first.length) continue;
    const sum = chosen.reduce((a, b) => a + b, 0);
    all += 1;
    if (sum <= seen) less += 1;
    if (sum >= seen) greater += 1;
  }
  return { pLess: less / all, pGreater: greater / all };
}

describe('rank sum', () => {
  it('counts every choice of ranks, ties too', () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        const test = rankSum(first, second);
        const { pLess, pGreater } = byEnumeration(first, second);
        expect(test.pLess).toBeCloseTo(pLess, 12);
        expect(test.pGreater).toBeCloseTo(pGreater, 12);
      }),
    );
  });

  it('has the sum of ranks of the registry library', () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        expect(rankSum(first, second).w).toBe(wilcoxonRankSum(first, second));
      }),
    );
  });

  it('turns round when the groups are exchanged', () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        const [test, turned] = [rankSum(first, second), rankSum(second, first)];
        expect(turned.pLess).toBeCloseTo(test.pGreater, 12);
        expect(turned.pTwoSided).toBeCloseTo(test.pTwoSided, 12);
      }),
    );
  });

  it('three against three can reach 1 in 20 and no less', () => {
    expect(rankSum([1, 2, 3], [4, 5, 6]).pLess).toBeCloseTo(1 / 20, 12);
  });

  it('says nothing without a second group or where all values are one', () => {
    expect(rankSum([1, 2], [])).toMatchObject({ pLess: 1, pGreater: 1, pTwoSided: 1 });
    expect(rankSum([], [])).toMatchObject({ w: 0, pTwoSided: 1 });
    expect(rankSum(new Array<number>(40).fill(2), new Array<number>(40).fill(2)).pTwoSided).toBe(1);
  });

  it('beyond sixty values is near the exact value, counted another way', () => {
    for (const lift of [-0.4, 0, 0.3]) {
      const values = (count: number, by: number) =>
        Array.from({ length: count }, (_, at) => Math.sin(at * 5) + by);
      const [first, second] = [values(15, 0.001 + lift), values(46, 0)];
      const test = rankSum(first, second);
      expect(test.exact).toBe(false);
      const u = first.flatMap((x) => second.filter((y) => y < x)).length;
      expect(Math.abs(test.pLess - mannWhitneyUpTo(u, 15, 46))).toBeLessThan(0.005);
    }
  });
});

/** The chance of U up to `u` without ties, by which group the greatest value is in (Mann & Whitney 1947). */
function mannWhitneyUpTo(u: number, first: number, second: number): number {
  const known = new Map<string, number>();
  const chance = (n: number, m: number, at: number): number => {
    if (at < 0) return 0;
    if (n === 0 || m === 0) return at === 0 ? 1 : 0;
    const key = `${n} ${m} ${at}`;
    const found = known.get(key) ?? (n * chance(n - 1, m, at - m) + m * chance(n, m - 1, at)) / (n + m);
    known.set(key, found);
    return found;
  };
  return Array.from({ length: u + 1 }, (_, at) => chance(first, second, at)).reduce((a, b) => a + b, 0);
}
