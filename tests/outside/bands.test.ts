import { describe, expect, test } from 'vitest';
import { bandOf, scaleLimit } from '../../src/core/marking/band';
import { rowsFor } from '../../src/core/marking/rows';
import { defaultChildSettings } from '../../src/core/record/settings';

const { limits, rows } = defaultChildSettings;

// Common practice, no source: of 25 facts in 45 s, 20–25, 15–19, 10–14 and under 10 right.
describe('the trade’s bands (common practice, no source)', () => {
  test('of 25: 20–25, 15–19, 10–14, under 10', () => {
    const fallen = Array.from({ length: 26 }, (_, right) => bandOf(right, 25, limits));
    const wanted = [
      ...Array.from({ length: 10 }, () => 'thin'),
      ...Array.from({ length: 5 }, () => 'loose'),
      ...Array.from({ length: 5 }, () => 'even'),
      ...Array.from({ length: 6 }, () => 'firm'),
    ];
    expect(fallen).toEqual(wanted);
  });

  // Worked by hand: n × 20/25, 15/25, 10/25, rounded up.
  test.each([
    [5, 4, 3, 2],
    [10, 8, 6, 4],
    [15, 12, 9, 6],
    [20, 16, 12, 8],
    [25, 20, 15, 10],
    [30, 24, 18, 12],
    [50, 40, 30, 20],
    [100, 80, 60, 40],
    [7, 6, 5, 3],
  ])('of %d the limits are %d, %d and %d', (length, firm, even, loose) => {
    expect([limits.firm, limits.even, limits.loose].map((limit) => scaleLimit(limit, length))).toEqual([
      firm,
      even,
      loose,
    ]);
    expect(bandOf(firm, length, limits)).toBe('firm');
    expect(bandOf(firm - 1, length, limits)).toBe('even');
    expect(bandOf(even - 1, length, limits)).toBe('loose');
    expect(bandOf(loose - 1, length, limits)).toBe('thin');
  });

  test('extra rows after each: none, none, one, two', () => {
    expect([
      rowsFor('firm', rows),
      rowsFor('even', rows),
      rowsFor('loose', rows),
      rowsFor('thin', rows),
    ]).toEqual([0, 0, 1, 2]);
  });

  test('the clock is 45 s for 25 facts', () => {
    expect([defaultChildSettings.allowanceS, defaultChildSettings.length]).toEqual([45, 25]);
  });
});
