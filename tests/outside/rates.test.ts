import { expect, test } from 'vitest';
import { perMinute } from '../../src/core/marking/rate';
import { facts, marked, sit } from '../core/marking/made-sat';

// Digits correct a minute = digits × 60 / seconds (Burns, VanDerHeyden & Jiban 2006).
test('38 digits in 90 s are 25.33 a minute', () => {
  expect(perMinute(38, 90_000)).toBeCloseTo(25.33, 2);
  expect(perMinute(38, 90_000)).toBe((38 * 60) / 90);
});

test('a sheet with 38 digits correct in 90 s says the same', () => {
  // 20 two-digit answers, 19 right and one with neither digit right, 4.5 s each.
  const prompts = facts(20);
  const deeds = prompts.map((_, place) => (place === 0 ? ('wrong' as const) : ('right' as const)));
  const result = marked(sit(prompts, deeds, {}, 4500));
  expect(result.digitsPerMin).toBeCloseTo(25.33, 2);
});

test('of no time there is no rate', () => {
  expect(perMinute(38, 0)).toBeNull();
});
