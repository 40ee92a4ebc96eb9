import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId, Operation } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { familyOf } from '../../../src/core/fact/family';
import { chooseSpoken, type SpokenOrder } from '../../../src/core/look-back/spoken-check';
import type { FactSummary } from '../../../src/core/summary/summary';
import { known, knownOn } from '../known';

const today = '2026-06-01';
const everyId = (['add', 'sub', 'mul', 'div'] satisfies Operation[]).flatMap((op) =>
  factsOf(op).map(({ id }) => id),
);
const secure = knownOn('2026-05-20', '2026-05-25', '2026-05-30');
const weeksAgo = knownOn('2026-02-02', '2026-03-01', '2026-04-02');
const missed: FactSummary = { ...secure, recent: '1101' };

function order(
  facts: readonly (readonly [FactId, FactSummary])[],
  over: Partial<SpokenOrder> = {},
): SpokenOrder {
  return { today, among: facts.map(([id]) => id), facts: new Map(facts), seed: 3, ...over };
}

const anySummary = fc.record({
  days: fc.subarray(['2026-01-05', '2026-02-02', '2026-04-10', '2026-05-20', '2026-05-31']),
  recent: fc.stringMatching(/^[01]{1,8}$/),
});
const anyOrder = fc
  .record({
    facts: fc.uniqueArray(fc.tuple(fc.constantFrom(...everyId), anySummary), {
      selector: ([id]) => id,
      maxLength: 40,
    }),
    unasked: fc.subarray(everyId, { maxLength: 10 }),
    seed: fc.nat(),
  })
  .map(({ facts, unasked, seed }) => {
    const made = facts.map(([id, { days, recent }]) => [id, { ...knownOn(...days), recent }] as const);
    return { ...order(made, { seed }), among: [...made.map(([id]) => id), ...unasked] };
  });

describe('a spoken check', () => {
  test('is two to five facts the child has answered, no two of one family, or none', () => {
    fc.assert(
      fc.property(anyOrder, (given) => {
        const chosen = chooseSpoken(given);
        expect([0, 2, 3, 4, 5]).toContain(chosen.length);
        for (const { fact } of chosen) {
          expect(given.facts.has(fact)).toBe(true);
          const family = familyOf(known(fact)).map(({ id }) => id);
          expect(chosen.filter((other) => family.includes(other.fact))).toHaveLength(1);
        }
        expect(chooseSpoken(given)).toEqual(chosen);
      }),
    );
  });

  test('gives reasons that the answers bear out', () => {
    fc.assert(
      fc.property(anyOrder, (given) => {
        for (const { fact, reason } of chooseSpoken(given)) {
          const summary = given.facts.get(fact);
          if (reason.why === 'missed') {
            const last = summary?.recent.slice(-3) ?? '';
            expect(reason).toEqual({ why: 'missed', wrong: last.split('0').length - 1, of: last.length });
            expect(reason.wrong).toBeGreaterThan(0);
          } else if (reason.why === 'young') {
            expect(reason.rightDays).toBe(summary?.rightDays);
          } else expect(reason.days === null).toBe(summary?.lastRight.length === 0);
        }
      }),
    );
  });

  test('asks what was missed lately, what was long not right, and what is young', () => {
    const chosen = chooseSpoken(
      order([
        ['mul-2-3', secure],
        ['mul-6-7', missed],
        ['mul-8-9', weeksAgo],
        ['mul-4-4', knownOn('2026-05-31')],
        ['mul-5-5', secure],
      ]),
    );
    expect(chosen).toEqual([
      { fact: 'mul-6-7', reason: { why: 'missed', wrong: 1, of: 3 } },
      { fact: 'mul-8-9', reason: { why: 'faded', days: 60 } },
      { fact: 'mul-4-4', reason: { why: 'young', rightDays: 1 } },
    ]);
  });

  test('asks at most two that were missed and two that faded, the most faded first', () => {
    const older = knownOn('2026-01-05', '2026-01-06', '2026-01-07');
    const chosen = chooseSpoken(
      order([
        ['mul-6-7', missed],
        ['mul-6-8', missed],
        ['mul-6-9', missed],
        ['mul-7-8', weeksAgo],
        ['mul-7-9', older],
        ['mul-8-9', weeksAgo],
      ]),
    );
    expect(chosen.map(({ reason }) => reason.why)).toEqual(['missed', 'missed', 'faded', 'faded']);
    expect(chosen[2]?.fact).toBe('mul-7-9');
  });

  test('of a child who holds everything asks two', () => {
    const chosen = chooseSpoken(
      order([
        ['mul-2-3', secure],
        ['mul-2-4', secure],
        ['mul-2-5', secure],
      ]),
    );
    expect(chosen).toHaveLength(2);
    expect(chosen[0]?.reason).toEqual({ why: 'faded', days: 2 });
  });

  test('is none where fewer than two facts were answered', () => {
    expect(chooseSpoken(order([['mul-2-3', missed]], { among: ['mul-2-3', 'mul-2-4'] }))).toEqual([]);
    expect(chooseSpoken(order([]))).toEqual([]);
  });
});
