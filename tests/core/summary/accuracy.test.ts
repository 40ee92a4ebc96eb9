import { expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { accuracyOf, isAccurate, isNew } from '../../../src/core/summary/accuracy';
import { emptySummary, type Summary, type UntimedAnswer } from '../../../src/core/summary/summary';

const set: ReadonlySet<FactId> = new Set(['mul-2-3', 'mul-2-4']);

function answered(...parts: readonly (readonly [FactId, boolean, number])[]): Summary {
  const untimed = parts.flatMap(([fact, right, times]) =>
    Array.from({ length: times }, (): UntimedAnswer => [fact, right]),
  );
  return { ...emptySummary, untimed };
}

// 45 of the last 50: the design's own rule.
test('45 right of the last 50 is accurate, 44 is not', () => {
  expect(isAccurate(answered(['mul-2-3', false, 5], ['mul-2-4', true, 45]), set)).toBe(true);
  expect(isAccurate(answered(['mul-2-3', false, 6], ['mul-2-4', true, 44]), set)).toBe(false);
});

test('fewer than 50 answers are not enough to say', () => {
  expect(isAccurate(answered(['mul-2-3', true, 49]), set)).toBe(false);
  expect(accuracyOf(answered(['mul-2-3', true, 49]), set)).toEqual({ right: 49, of: 49 });
});

test('what was wrong before the last 50 is forgotten', () => {
  expect(accuracyOf(answered(['mul-2-3', false, 30], ['mul-2-4', true, 50]), set)).toEqual({
    right: 50,
    of: 50,
  });
});

test('answers to facts of other sets neither help nor harm', () => {
  const mixed = answered(
    ['mul-2-3', true, 45],
    ['div-6-2', false, 40],
    ['mul-2-4', false, 5],
    ['add-1-1', true, 60],
  );
  expect(accuracyOf(mixed, set)).toEqual({ right: 45, of: 50 });
});

test('a set is new until each of its facts was right at first try on three days', () => {
  const fact = (rightDays: number) => ({
    rightDays,
    firstRight: '2026-03-02',
    lastRight: [],
    seen: 9,
    lastSeen: '2026-03-02',
    recent: '1',
  });
  const known = (x: number, y: number): Summary => ({
    ...emptySummary,
    facts: new Map<FactId, ReturnType<typeof fact>>([
      ['mul-2-3', fact(x)],
      ['mul-2-4', fact(y)],
    ]),
  });
  expect(isNew(emptySummary, set)).toBe(true);
  expect(isNew(known(3, 2), set)).toBe(true);
  expect(isNew(known(3, 3), set)).toBe(false);
});
