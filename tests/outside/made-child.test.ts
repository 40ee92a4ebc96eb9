import { linearRegression, mean, medianSorted, quantileSorted } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { ageScaling, countStepAge, countStepMs } from '../../src/demo/assumptions';
import { makeChance } from '../../src/demo/chance';
import { countingMs, memoryMs, memoryShare } from '../../src/demo/strategy';
import { known } from '../core/known';

describe('what the made children are made of', () => {
  // Kail 1991, 1 + 5.16·e^(−.21·age), from memory; the values recomputed in R.
  test.each([
    [7, 2.186],
    [8, 1.962],
    [9, 1.78],
    [10, 1.632],
    [12, 1.415],
  ])('speeded tasks at %i take %f times as long as in a grown-up', (years, factor) => {
    expect(ageScaling(years)).toBeCloseTo(factor, 3);
  });

  // Groen & Parkman 1972; Ashcraft & Stazyk 1981: about 400 ms a step, by the smaller addend.
  test('counting on costs 400 ms a step at the age it was measured at', () => {
    const [two, three, four] = ['add-7-2', 'add-7-3', 'add-7-4'].map((id) =>
      countingMs(countStepAge, known(id)),
    );
    expect((three ?? 0) - (two ?? 0)).toBeCloseTo(countStepMs);
    expect((four ?? 0) - (three ?? 0)).toBeCloseTo(400);
    expect(countingMs(7, known('add-3-7'))).toBe(three);
  });

  // Rickard 1997: about 60 exposures to a complete shift to memory.
  test('a fact met 60 times is remembered, one never met is counted', () => {
    expect(memoryShare(0)).toBe(0);
    expect(memoryShare(60)).toBeGreaterThan(0.95);
    expect(memoryShare(30)).toBeLessThan(0.9);
  });

  // Zbrodoff 1995, alphabet arithmetic, mean s for +2, +3, +4 by block; the slopes by least squares in R.
  test('the cost of a count falls with practice as it does in print', () => {
    const published = [
      [1.84, 2.46, 2.82],
      [1.21, 1.45, 1.42],
      [1.14, 1.21, 1.17],
    ].map((times) => linearRegression([2, 3, 4].map((addend, index) => [addend, times[index] ?? 0])).m);
    expect(published.map((slope) => slope.toFixed(3))).toEqual(['0.490', '0.105', '0.015']);

    const slopeAt = (exposures: number) => {
      const expected = (id: string) =>
        memoryShare(exposures) * memoryMs(20, exposures) +
        (1 - memoryShare(exposures)) * countingMs(20, known(id));
      return linearRegression([2, 3, 4].map((addend) => [addend, expected(`add-9-${addend}`)])).m;
    };
    const [first = 1, ...later] = published;
    for (const [index, exposures] of [26, 59].entries())
      expect(slopeAt(exposures) / slopeAt(0)).toBeCloseTo((later[index] ?? 0) / first, 2);
  });

  // Log-normal of median 1.5 s and s = .4: mean 1.624931, 90th percentile 2.504492 (R).
  test('times are drawn from a log-normal', () => {
    const chance = makeChance(5);
    const times = Array.from({ length: 40_000 }, () => 1.5 * chance.factor(0.4)).sort((x, y) => x - y);
    expect(medianSorted(times)).toBeCloseTo(1.5, 1);
    expect(mean(times)).toBeCloseTo(1.624931, 1);
    expect(quantileSorted(times, 0.9)).toBeCloseTo(2.504492, 1);
  });
});
