import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayScale, dayTicks, noonOf, room, valueScale } from '../../../src/parent/chart/day-scale';
import { isFilled, type Mark, markPath } from '../../../src/parent/chart/marks';

const day = fc
  .integer({ min: 0, max: 4000 })
  .map((n) => new Date(Date.UTC(2020, 0, 1 + n)).toISOString().slice(0, 10));

test('every day lies inside the chart, in the order of time', () => {
  fc.assert(
    fc.property(
      fc.array(day, { minLength: 1, maxLength: 40 }),
      fc.integer({ min: 240, max: 900 }),
      (days, edge) => {
        const x = dayScale(days, edge);
        const sorted = days.toSorted().map((one) => x(noonOf(one)));
        for (const [index, at] of sorted.entries()) {
          expect(at).toBeGreaterThanOrEqual(room.left);
          expect(at).toBeLessThanOrEqual(edge);
          if (index > 0) expect(at).toBeGreaterThanOrEqual(sorted[index - 1] ?? 0);
        }
      },
    ),
  );
});

test('days below a chart never crowd: each name has its room', () => {
  for (const width of [240, 358, 640, 830]) {
    const ticks = dayTicks(dayScale(['2026-10-01', '2026-11-25'], width), width);
    for (const [index, { x }] of ticks.entries()) {
      if (index > 0) expect(x - (ticks[index - 1]?.x ?? 0)).toBeGreaterThan(44);
    }
  }
});

test('a name stands below its own day', () => {
  const [first] = dayTicks(dayScale(['2026-10-01', '2026-10-30'], 640), 640);
  expect(first?.text).toMatch(/^\d{1,2} Oct$/);
  const at = new Date(`2026-10-${first?.text.split(' ')[0]?.padStart(2, '0')}T00:00:00Z`);
  expect(first?.x).toBeCloseTo(dayScale(['2026-10-01', '2026-10-30'], 640)(at), 6);
});

test('values begin at nought and the greatest fits', () => {
  const y = valueScale(23, 240);
  expect(y(0)).toBe(240 - room.bottom);
  expect(y(23)).toBeGreaterThanOrEqual(room.top);
  expect(valueScale(0, 240)(0)).toBe(240 - room.bottom);
});

test('marks differ in shape, and open ones from filled ones', () => {
  const marks: readonly Mark[] = ['dot', 'diamond', 'square', 'triangle'];
  expect(new Set(marks.map((mark) => markPath(mark))).size).toBe(marks.length);
  expect(marks.filter((mark) => isFilled[mark])).toEqual(['dot', 'square']);
});

test('a mark drawn around a point is the same mark moved there', () => {
  for (const mark of ['dot', 'diamond', 'square', 'triangle', 'cross'] as const) {
    const ends = (path: string) =>
      [...path.matchAll(/[MLA]([^A-Za-z]+)/g)].map(([, numbers = '']) => numbers.split(',').map(Number));
    const [here, moved] = [ends(markPath(mark)), ends(markPath(mark, 100, 7))];
    expect(moved).toHaveLength(here.length);
    for (const [index, numbers] of here.entries()) {
      const [x = 0, y = 0] = numbers.slice(-2);
      const [movedX = 0, movedY = 0] = moved[index]?.slice(-2) ?? [];
      expect(movedX - x).toBeCloseTo(100, 9);
      expect(movedY - y).toBeCloseTo(7, 9);
      expect(moved[index]?.slice(0, -2)).toEqual(numbers.slice(0, -2));
    }
  }
});
