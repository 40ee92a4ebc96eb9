import fc from 'fast-check';
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { moreByChance, type TwoKinds } from '../../../src/readings/statistics/stratified-counts';

const table = (failedOne: number, ofOne: number, failedOther: number, ofOther: number): TwoKinds => ({
  failedOne,
  ofOne,
  failedOther,
  ofOther,
});

const anyTable = fc
  .tuple(fc.nat(4), fc.nat(4), fc.nat(4), fc.nat(4))
  .map(([a, b, c, d]) => table(a, a + b, c, c + d));

/** Deals every failure to every set of tries, as cards. */
function byDealing(tables: readonly TwoKinds[]): number {
  const seen = tables.reduce((sum, { failedOne }) => sum + failedOne, 0);
  let [atLeast, all] = [0, 0];
  const deal = (left: readonly TwoKinds[], sum: number): void => {
    const [first, ...rest] = left;
    if (!first) {
      all += 1;
      if (sum >= seen) atLeast += 1;
      return;
    }
    const tries = first.ofOne + first.ofOther;
    const failed = first.failedOne + first.failedOther;
    for (let mask = 0; mask < 2 ** tries; mask += 1) {
      const bits = [...mask.toString(2)].filter((bit) => bit === '1').length;
      if (bits !== failed) continue;
      const inOne = [...(mask % 2 ** first.ofOne).toString(2)].filter((bit) => bit === '1').length;
      deal(rest, sum + inOne);
    }
  };
  deal(tables, 0);
  return atLeast / all;
}

describe('failures on tries of two kinds', () => {
  it('are dealt blindly: two small tables, every deal counted', () => {
    const small = fc
      .tuple(fc.nat(2), fc.nat(2), fc.nat(2), fc.nat(2))
      .map(([a, b, c, d]) => table(a, a + b, c, c + d));
    fc.assert(
      fc.property(fc.array(small, { minLength: 1, maxLength: 2 }), (tables) => {
        expect(moreByChance(tables)).toBeCloseTo(byDealing(tables), 10);
      }),
      { numRuns: 60 },
    );
  });

  it('one table is Fisher’s exact test, as another hand has it', () => {
    fc.assert(
      fc.property(anyTable, (one) => {
        const failed = one.failedOne + one.failedOther;
        const all = one.ofOne + one.ofOther;
        let tail = 0;
        for (let count = one.failedOne; count <= Math.min(failed, one.ofOne); count += 1) {
          if (failed - count <= one.ofOther) tail += jStat.hypgeom.pdf(count, all, failed, one.ofOne);
        }
        expect(moreByChance([one])).toBeCloseTo(failed === 0 ? 1 : tail, 8);
      }),
    );
  });

  it('a table in which nothing failed, or everything, changes nothing', () => {
    fc.assert(
      fc.property(fc.array(anyTable, { minLength: 1, maxLength: 4 }), (tables) => {
        const without = moreByChance(tables);
        expect(moreByChance([...tables, table(0, 5, 0, 4), table(3, 3, 2, 2)])).toBeCloseTo(without, 10);
      }),
    );
  });

  it('nothing to compare is no evidence', () => {
    expect(moreByChance([])).toBe(1);
    expect(moreByChance([table(2, 4, 0, 0)])).toBe(1);
  });

  it('the more of kind one fail, the less likely it is by chance', () => {
    const chances = [4, 5, 6, 7, 8].map((failed) => moreByChance([table(failed, 10, 12 - failed, 20)]));
    expect(chances).toEqual([...chances].sort((x, y) => y - x));
  });
});
