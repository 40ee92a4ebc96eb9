import { differenceInCalendarDays, isWeekend, parseISO } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { schoolDays } from '../../src/demo/school-days';
import { utc, wallMs } from '../../src/demo/wall-clock';

describe('school days', () => {
  test('are eight weeks of them, less a week of holiday, and today', () => {
    const days = schoolDays('2026-11-25');
    expect(days[0]).toBe('2026-09-30');
    expect(days.at(-1)).toBe('2026-11-25');
    expect(days).toHaveLength(8 * 5 - 5 + 1);
    const holiday = ['2026-10-26', '2026-10-27', '2026-10-28', '2026-10-29', '2026-10-30'];
    expect(holiday.filter((day) => days.includes(day))).toEqual([]);
  });

  test('rise, and fall on no weekend but today, from any day on', () => {
    const day = fc.date({ min: new Date('2020-01-01'), max: new Date('2060-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(day, (date) => {
        const today = date.toISOString().slice(0, 10);
        const days = schoolDays(today);
        expect(days.toSorted()).toEqual(days);
        expect(new Set(days).size).toBe(days.length);
        expect(days.slice(0, -1).filter((one) => isWeekend(parseISO(one)))).toEqual([]);
        const first = parseISO(days[0] ?? today);
        expect(differenceInCalendarDays(parseISO(today), first)).toBeLessThanOrEqual(8 * 7);
        expect(days.length).toBe(36);
      }),
    );
  });
});

describe('the clock on the wall', () => {
  test('shows the hour of the place', () => {
    expect(wallMs('2026-11-25', 9, 5, utc)).toBe(Date.UTC(2026, 10, 25, 9, 5));
    const east = () => ({ zone: 'Asia/Kolkata', offsetMin: 330 });
    expect(wallMs('2026-11-25', 9, 5, east)).toBe(Date.UTC(2026, 10, 25, 3, 35));
  });

  test('is right on the day on which the clocks change', () => {
    // Europe/London leaves summer time on 25 October 2026 at 1:00 UTC.
    const change = Date.UTC(2026, 9, 25, 1);
    const london = (atMs: number) => ({ zone: 'Europe/London', offsetMin: atMs < change ? 60 : 0 });
    expect(wallMs('2026-10-24', 9, 0, london)).toBe(Date.UTC(2026, 9, 24, 8));
    expect(wallMs('2026-10-25', 9, 0, london)).toBe(Date.UTC(2026, 9, 25, 9));
  });
});
