import fc from 'fast-check';
import { median } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { hodgesLehmann } from '../../../src/readings/statistics/hodges-lehmann';
import { signedRank } from '../../../src/readings/statistics/signed-rank';

const differences = fc.array(fc.integer({ min: -400, max: 500 }), { minLength: 6, maxLength: 20 });
// Values of which no two pairs have the same mean, so that the test has no ties to share out.
const apart = fc
  .record({ seed: fc.nat(100_000), count: fc.integer({ min: 6, max: 16 }) })
  .map(({ seed, count }) =>
    Array.from({ length: count }, (_, index) => 10 * Math.sin(seed + 1.7 * index ** 2)),
  );

describe('the shift of paired differences', () => {
  it('is the middle of all pairwise means', () => {
    fc.assert(
      fc.property(differences, (values) => {
        const means = values.flatMap((x, i) => values.slice(i).map((y) => (x + y) / 2));
        expect(hodgesLehmann(values)?.shift).toBe(median(means));
      }),
    );
  });

  it('moves with the values and lies in its interval', () => {
    fc.assert(
      fc.property(differences, fc.integer({ min: -50, max: 50 }), (values, by) => {
        const at = hodgesLehmann(values);
        const moved = hodgesLehmann(values.map((value) => value + by));
        if (!at?.interval || !moved?.interval) throw new Error('six values have an interval');
        expect(moved.shift).toBeCloseTo(at.shift + by, 9);
        expect(moved.interval.low).toBeCloseTo(at.interval.low + by, 9);
        expect(at.interval.low).toBeLessThanOrEqual(at.shift);
        expect(at.interval.high).toBeGreaterThanOrEqual(at.shift);
      }),
    );
  });

  it('has in its interval what the signed-rank test does not reject, and nothing else', () => {
    fc.assert(
      fc.property(apart, (values) => {
        const interval = hodgesLehmann(values)?.interval;
        if (!interval) throw new Error('six values have an interval');
        const width = interval.high - interval.low;
        const rejects = (shift: number) => signedRank(values.map((value) => value - shift)).pTwoSided <= 0.05;
        expect(rejects(interval.low + width * 1e-9)).toBe(false);
        expect(rejects(interval.high - width * 1e-9)).toBe(false);
        expect(rejects(interval.low - width * 1e-9)).toBe(true);
        expect(rejects(interval.high + width * 1e-9)).toBe(true);
      }),
    );
  });

  it('has no interval at 95 % from five values, and one from six', () => {
    expect(hodgesLehmann([1, 2, 3, 4, 5])?.interval).toBeNull();
    expect(hodgesLehmann([1, 2, 3, 4, 5, 6])?.interval).toEqual({ low: 1, high: 6 });
    expect(hodgesLehmann([])).toBeNull();
  });

  it('goes over to the normal curve without a jump', () => {
    const values = (count: number) => Array.from({ length: count }, (_, index) => Math.sin(index * 7) + 0.2);
    const exact = hodgesLehmann(values(150))?.interval;
    const nearly = hodgesLehmann(values(151))?.interval;
    expect(Math.abs((exact?.low ?? 0) - (nearly?.low ?? 9))).toBeLessThan(0.02);
    expect(Math.abs((exact?.high ?? 0) - (nearly?.high ?? 9))).toBeLessThan(0.02);
  });
});
