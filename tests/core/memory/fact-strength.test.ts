import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factStrength } from '../../../src/core/memory/fact-strength';
import { memoryStrength } from '../../../src/core/memory/memory-strength';
import { knownOn } from '../known';

const today = '2026-03-31';
const march = fc.subarray(
  Array.from({ length: 30 }, (_, index) => index + 1),
  { minLength: 1 },
);
const dayOf = (date: number) => `2026-03-${String(date).padStart(2, '0')}`;

test('of up to four right days is the equation over their ages in days', () => {
  expect(factStrength(knownOn('2026-03-30'), today)).toBeCloseTo(memoryStrength([1]), 12);
  const days = ['2026-03-01', '2026-03-15', '2026-03-22', '2026-03-30'];
  expect(factStrength(knownOn(...days), today)).toBeCloseTo(memoryStrength([30, 16, 9, 1]), 12);
});

test('of a fact never right, or never met, is no strength at all', () => {
  expect(factStrength(undefined, today)).toBe(Number.NEGATIVE_INFINITY);
  expect(factStrength(knownOn(), today)).toBe(Number.NEGATIVE_INFINITY);
});

test('fades from day to day', () => {
  fc.assert(
    fc.property(march, (dates) => {
      const fact = knownOn(...dates.map(dayOf));
      expect(factStrength(fact, '2026-04-10')).toBeLessThan(factStrength(fact, '2026-04-09'));
    }),
  );
});

test('the same number of right days, spread further back, is weaker', () => {
  const late = knownOn('2026-03-28', '2026-03-29', '2026-03-30');
  const early = knownOn('2026-02-01', '2026-02-02', '2026-02-03');
  expect(factStrength(early, today)).toBeLessThan(factStrength(late, today));
});

test('a fact right earlier today is held, not infinitely', () => {
  const strength = factStrength(knownOn(today), today);
  expect(strength).toBeGreaterThan(factStrength(knownOn('2026-03-30'), today));
  expect(Number.isFinite(strength)).toBe(true);
});
