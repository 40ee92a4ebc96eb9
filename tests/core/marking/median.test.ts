import fc from 'fast-check';
import { median as published } from 'simple-statistics';
import { expect, test } from 'vitest';
import { median } from '../../../src/core/marking/median';

test('agrees with a published library on any times, to less than a microsecond', () => {
  const times = fc.array(
    fc.nat(1e9).map((micros) => micros / 1000),
    { minLength: 1 },
  );
  fc.assert(
    fc.property(times, (values) => {
      expect(median(values)).toBeCloseTo(published(values), 6);
    }),
    { numRuns: 2000 },
  );
});

// Heathcote 1996; recomputed exactly.
test('of ten published response times it is 548.9265', () => {
  const times = [474.688, 506.445, 524.081, 530.672, 530.869, 566.984, 582.311, 582.94, 603.574, 792.358];
  expect(median(times)).toBeCloseTo(548.9265, 9);
});

test('of nothing there is none, and the values keep their order', () => {
  const values = [3, 1, 2];
  expect(median([])).toBeNull();
  expect(median(values)).toBe(2);
  expect(values).toEqual([3, 1, 2]);
});
