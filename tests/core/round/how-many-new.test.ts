import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { howManyNew } from '../../../src/core/round/how-many-new';
import type { RoundSummary } from '../../../src/core/summary/summary';

/** A day's round of which so many stayed and so many did not. */
function round(taken: number, missed: number, waiting = 0): RoundSummary {
  const ids = (count: number) => Array.from({ length: count }, (_, n) => `mul-${n + 2}-7` as const);
  return { day: '2026-03-02', waiting: ids(waiting), taken, missed: ids(missed) };
}

const anyRounds = fc.array(
  fc.tuple(fc.nat(8), fc.nat(8), fc.nat(2)).map(([taken, missed, waiting]) => round(taken, missed, waiting)),
  { maxLength: 5 },
);

test('is 2 to 8, whatever has been', () => {
  fc.assert(
    fc.property(anyRounds, (rounds) => {
      expect(howManyNew(rounds, null)).toBeGreaterThanOrEqual(2);
      expect(howManyNew(rounds, null)).toBeLessThanOrEqual(8);
    }),
  );
});

test('is what the parent fixed, in the same bounds', () => {
  const weak = [round(0, 4), round(0, 4), round(0, 4), round(0, 4)];
  expect(howManyNew(weak, 6)).toBe(6);
  expect(howManyNew([], 1)).toBe(2);
  expect(howManyNew([], 20)).toBe(8);
});

describe('follows the child', () => {
  test('up by one a day or less where all stay, down to what stayed where some do not', () => {
    expect(howManyNew([round(4, 0)], null)).toBe(4);
    expect(howManyNew([round(4, 0), round(4, 0)], null)).toBe(5);
    expect(howManyNew([round(2, 2)], null)).toBe(4);
    expect(howManyNew([round(2, 2), round(2, 2)], null)).toBe(3);
    expect(howManyNew([round(0, 4), round(0, 3), round(0, 2), round(0, 2)], null)).toBe(2);
  });

  test('by its newest four days that were judged; one still waiting says nothing', () => {
    const old = round(0, 8);
    const four = [round(6, 0), round(6, 0), round(6, 0), round(6, 0)];
    expect(howManyNew([old, ...four], null)).toBe(7);
    expect(howManyNew([round(0, 3, 1)], null)).toBe(4);
  });

  test.each([2, 3, 4, 5, 6, 7])('to a child who keeps %i a day, and stays within one of it', (capacity) => {
    let rounds: readonly RoundSummary[] = [];
    const given: number[] = [];
    for (let day = 0; day < 60; day += 1) {
      const many = howManyNew(rounds, null);
      given.push(many);
      const taken = Math.min(many, capacity);
      rounds = [...rounds, round(taken, many - taken)].slice(-5);
    }
    for (const many of given.slice(20)) expect(Math.abs(many - capacity)).toBeLessThanOrEqual(1);
  });

  test('never down when one more stays', () => {
    fc.assert(
      fc.property(anyRounds, fc.nat(7), fc.integer({ min: 1, max: 8 }), (rounds, taken, missed) => {
        const more = howManyNew([...rounds, round(taken + 1, missed - 1)], null);
        expect(more).toBeGreaterThanOrEqual(howManyNew([...rounds, round(taken, missed)], null));
      }),
    );
  });
});
