import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  daysBetween,
  evenMemoryStrength,
  memoryStrength,
  nearMemoryStrength,
  recallTime,
} from '../../../src/core/memory/memory-strength';

const age = fc.integer({ min: 1, max: 1_000_000 });
const ages = fc.array(age, { minLength: 1, maxLength: 20 });

test('a memory is the stronger for every use and the weaker for every second', () => {
  fc.assert(
    fc.property(ages, (uses) => {
      expect(memoryStrength([...uses, 500])).toBeGreaterThan(memoryStrength(uses));
      expect(memoryStrength(uses.map((use) => use + 60))).toBeLessThan(memoryStrength(uses));
    }),
  );
  expect(memoryStrength([])).toBe(Number.NEGATIVE_INFINITY);
});

test('the even form comes near the exact one where uses are spread evenly', () => {
  const uses = Array.from({ length: 200 }, (_, use) => (use + 1) * 60);
  expect(evenMemoryStrength(200, 200 * 60)).toBeCloseTo(memoryStrength(uses), 0);
});

test('the unit of the ages moves all strengths alike', () => {
  fc.assert(
    fc.property(ages, ages, (x, y) => {
      const inDays = (uses: readonly number[]) => memoryStrength(uses.map((use) => use / 86_400));
      expect(inDays(x) - inDays(y)).toBeCloseTo(memoryStrength(x) - memoryStrength(y), 9);
    }),
  );
});

describe('the hybrid form', () => {
  test('is the exact one where every use is kept', () => {
    fc.assert(
      fc.property(ages, (uses) => {
        const first = Math.max(...uses);
        expect(nearMemoryStrength(uses.length, first, uses)).toBeCloseTo(memoryStrength(uses), 12);
      }),
    );
  });

  test('is the even one where none is kept', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), age, (uses, first) => {
        expect(nearMemoryStrength(uses, first, [])).toBeCloseTo(evenMemoryStrength(uses, first), 9);
      }),
    );
  });

  test('with the newest four days kept lies within a tenth of the exact one on days drawn at random', () => {
    const days = fc.uniqueArray(fc.integer({ min: 1, max: 400 }), { minLength: 5, maxLength: 60 });
    let worst = 0;
    let sum = 0;
    let of = 0;
    fc.assert(
      fc.property(days, (drawn) => {
        const uses = drawn.toSorted((x, y) => x - y);
        const near = nearMemoryStrength(uses.length, uses.at(-1) ?? 1, uses.slice(0, 4));
        const off = Math.abs(near - memoryStrength(uses));
        worst = Math.max(worst, off);
        sum += off;
        of += 1;
      }),
      { numRuns: 1000, seed: 4 },
    );
    expect(sum / of).toBeLessThan(0.1);
    expect(worst).toBeLessThan(0.5);
  });

  test('grows with every older use and never falls below what is kept', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 200 }), fc.integer({ min: 60, max: 2000 }), (uses, first) => {
        const newest = [2, 9, 16, 40];
        const near = nearMemoryStrength(uses, first, newest);
        expect(nearMemoryStrength(uses + 1, first, newest)).toBeGreaterThan(near);
        expect(near).toBeGreaterThanOrEqual(memoryStrength(newest) - 1e-12);
      }),
    );
  });

  test('holds where all uses fell on one day', () => {
    expect(nearMemoryStrength(4, 3, [3])).toBeCloseTo(memoryStrength([3, 3, 3, 3]), 12);
  });
});

test('a memory stronger by ln 2 comes back in half the time', () => {
  expect(recallTime(1, Math.LN2)).toBeCloseTo(0.5, 12);
  expect(recallTime(0.63, 0)).toBe(0.63);
});

test('days between two dates, over a month’s end, a leap day and a change of the clocks', () => {
  expect(daysBetween('2026-11-25', '2026-11-25')).toBe(0);
  expect(daysBetween('2026-11-30', '2026-12-01')).toBe(1);
  expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
  expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  expect(daysBetween('2026-12-01', '2026-11-30')).toBe(-1);
});
