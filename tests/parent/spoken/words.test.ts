import { expect, test } from 'vitest';
import { reasonText } from '../../../src/parent/spoken/words';

test('every reason is a plain sentence with its evidence', () => {
  expect(reasonText({ why: 'missed', wrong: 2, of: 3 })).toBe(
    'Of its last three answers, two were wrong or skipped.',
  );
  expect(reasonText({ why: 'missed', wrong: 1, of: 3 })).toBe(
    'Of its last three answers, one was wrong or skipped.',
  );
  expect(reasonText({ why: 'missed', wrong: 1, of: 1 })).toBe('Its last answer was wrong or skipped.');
  expect(reasonText({ why: 'faded', days: 21 })).toBe('Last right at first try 21 days ago.');
  expect(reasonText({ why: 'faded', days: 0 })).toBe('Last right at first try today.');
  expect(reasonText({ why: 'faded', days: null })).toBe('It was never right at first try.');
  expect(reasonText({ why: 'young', rightDays: 1 })).toBe('Right at first try on one day so far.');
});
