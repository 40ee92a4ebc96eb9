import { expect, test } from 'vitest';
import { reminderOf } from '../../../src/parent/record-book/reminder';

const now = Date.parse('2026-11-28T10:00:00Z');
const daysAgo = (days: number) => now - days * 86_400_000;

test.each([
  ['never made', null, 14, true, /^There is no backup/],
  ['younger than set', 13, 14, true, null],
  ['as old as set', 14, 14, true, /^The last backup is 14 days old\.$/],
  [
    'a week old where the browser promises nothing',
    7,
    30,
    false,
    /seven days old\. The browser has not promised/,
  ],
  ['a week old where nobody can be asked', 8, 30, null, /eight days old\. The browser/],
  ['six days old where the browser promises nothing', 6, 30, false, null],
  ['from a clock that was ahead', -3, 14, true, null],
])('a backup %s', (_, age, remindAfterDays, persisted, says) => {
  const lastAt = age === null ? null : daysAgo(age);
  const reminder = reminderOf({ lastAt, remindAfterDays }, persisted, now);
  if (says === null) expect(reminder).toBeNull();
  else expect(reminder).toMatch(says);
});
