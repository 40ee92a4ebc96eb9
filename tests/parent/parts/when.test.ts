import { expect, test } from 'vitest';
import { longDay, secondsText, shortDay, spanText } from '../../../src/parent/parts/when';

test('a local day is written out without passing through any zone', () => {
  expect(longDay('2026-11-25')).toBe('Wednesday 25 November 2026');
  expect(shortDay('2028-02-29')).toBe('Tue 29 Feb 2028');
});

test('times are told to a tenth of a second, spans to a second or a minute', () => {
  expect(secondsText(2849)).toBe('2.8\u00a0s');
  expect(secondsText(0)).toBe('0.0\u00a0s');
  expect(spanText(45_400)).toBe('45\u00a0s');
  expect(spanText(89_999)).toBe('90\u00a0s');
  expect(spanText(90_000)).toBe('2\u00a0min');
});
