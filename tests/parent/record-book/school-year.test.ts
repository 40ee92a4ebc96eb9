import { expect, test } from 'vitest';
import { schoolYearName } from '../../../src/parent/record-book/school-year';

test.each([
  ['2026-09-07', '2026–27'],
  ['2027-05-31', '2026–27'],
  ['2027-06-01', '2027–28'],
  ['2099-09-01', '2099–00'],
])('%s lies in the school year %s', (day, name) => {
  expect(schoolYearName(day)).toBe(name);
});
