import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { factStrength } from '../../../src/core/memory/fact-strength';
import { withHeard } from '../../../src/core/memory/heard-aloud';
import { memoryStrength } from '../../../src/core/memory/memory-strength';
import type { SpokenAnswer } from '../../../src/core/record/household-record';
import { knownOn } from '../known';

const fact: FactId = 'mul-7-8';
const check = (day: string, came: SpokenAnswer, of: FactId = fact) => ({
  day,
  answers: [{ fact: of, came }],
});
const facts = new Map([[fact, knownOn('2026-03-01', '2026-03-09')]]);
const knownAfter = (...checks: readonly ReturnType<typeof check>[]) => withHeard(facts, checks).get(fact);

describe('a fact heard aloud', () => {
  test('that came right without help is one use more of its memory', () => {
    const strength = factStrength(knownAfter(check('2026-03-20', 'right')), '2026-03-30');
    expect(strength).toBeCloseTo(memoryStrength([29, 21, 10]), 12);
    expect(knownAfter(check('2026-03-20', 'right'))).toMatchObject({ rightDays: 3, lastSeen: '2026-03-20' });
  });

  test.each(['helped', 'notYet'] as const)('that came %s was met, and is held no more strongly', (came) => {
    expect(knownAfter(check('2026-03-20', came))).toEqual({ ...facts.get(fact), lastSeen: '2026-03-20' });
  });

  test('on a day it was right already adds nothing: a day is one use', () => {
    expect(knownAfter(check('2026-03-09', 'right'))).toEqual(facts.get(fact));
  });

  test('and never answered on a sheet is known of all the same', () => {
    const only = withHeard(new Map(), [check('2026-03-20', 'right')]).get(fact);
    expect(factStrength(only, '2026-03-24')).toBeCloseTo(memoryStrength([4]), 12);
    const missed = withHeard(new Map(), [check('2026-03-20', 'notYet')]).get(fact);
    expect(factStrength(missed, '2026-03-24')).toBe(Number.NEGATIVE_INFINITY);
  });

  test('leaves its other answers, and every other fact, as they were', () => {
    const spoken = [check('2026-03-20', 'right', 'mul-2-3')];
    const all = withHeard(facts, spoken);
    expect(all.get(fact)).toBe(facts.get(fact));
    const { recent, seen } = knownAfter(check('2026-03-20', 'notYet')) ?? {};
    expect({ recent, seen }).toEqual({ recent: facts.get(fact)?.recent, seen: facts.get(fact)?.seen });
    expect(facts.size).toBe(1);
  });

  test('is held the more strongly the more often it came right, whatever the order of the checks', () => {
    const day = fc.integer({ min: 10, max: 28 }).map((date) => `2026-03-${date}`);
    fc.assert(
      fc.property(fc.uniqueArray(day, { maxLength: 3 }), (days) => {
        const checks = days.map((one) => check(one, 'right'));
        const strength = factStrength(knownAfter(...checks), '2026-04-01');
        expect(strength).toBeCloseTo(factStrength(knownAfter(...checks.toReversed()), '2026-04-01'), 12);
        expect(strength).toBeGreaterThanOrEqual(factStrength(knownAfter(...checks.slice(1)), '2026-04-01'));
      }),
    );
  });
});
