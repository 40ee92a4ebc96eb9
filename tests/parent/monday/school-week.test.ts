import { expect, test } from 'vitest';
import { isWeekOver, nextSchoolDay } from '../../../src/parent/monday/school-week';

const workdays = [1, 2, 3, 4, 5];

test('the next school day passes over the days without school', () => {
  expect(nextSchoolDay('2026-11-25', workdays)).toBe('2026-11-26');
  expect(nextSchoolDay('2026-11-27', workdays)).toBe('2026-11-30');
  expect(nextSchoolDay('2026-11-28', workdays)).toBe('2026-11-30');
  expect(nextSchoolDay('2026-11-25', [3])).toBe('2026-12-02');
  expect(nextSchoolDay('2026-12-31', [5, 1])).toBe('2027-01-01');
});

test('a week is over on its last school day and on the free days after it', () => {
  expect(isWeekOver('2026-11-26', workdays)).toBe(false);
  expect(isWeekOver('2026-11-27', workdays)).toBe(true);
  expect(isWeekOver('2026-11-29', workdays)).toBe(true);
  expect(isWeekOver('2026-11-30', workdays)).toBe(false);
  expect(isWeekOver('2026-11-26', [2, 4])).toBe(true);
});
