import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId, Operation } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { buildLookBack, type LookBackOrder } from '../../../src/core/look-back/look-back-sheet';
import { setById } from '../../../src/core/set/teaching-sets';
import type { FactSummary } from '../../../src/core/summary/summary';
import { knownOn } from '../known';

const everyId = (['add', 'sub', 'mul', 'div'] satisfies Operation[]).flatMap((op) =>
  factsOf(op, 12).map(({ id }) => id),
);
const today = '2026-06-01';
const times2 = setById('times-2')?.facts ?? [];
const fresh = knownOn('2026-05-28', '2026-05-29', '2026-05-30');
const old = knownOn('2026-01-12');
const neverRight: FactSummary = { ...knownOn(), seen: 2, recent: '00' };

function order(over: Partial<LookBackOrder> = {}): LookBackOrder {
  return { today, kept: times2, facts: new Map(), length: 25, seed: 1, ...over };
}

const build = (over: Partial<LookBackOrder>) => buildLookBack(order(over)) ?? [];

describe('a look-back sheet', () => {
  const lengths = fc.integer({ min: 1, max: 20 }).map((rows) => rows * 5);
  const kept = fc.subarray(everyId, { minLength: 1 });

  test('has its length, of kept facts alone, none twice before each came once', () => {
    fc.assert(
      fc.property(kept, lengths, fc.nat(), (facts, length, seed) => {
        const sheet = build({ kept: facts, length, seed });
        expect(sheet).toHaveLength(length);
        const counts = facts.map((fact) => sheet.filter((one) => one === fact).length);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
        expect(counts.reduce((sum, count) => sum + count, 0)).toBe(length);
      }),
    );
  });

  test('from four facts on has none again within three cards', () => {
    fc.assert(
      fc.property(fc.subarray(everyId, { minLength: 8 }), lengths, fc.nat(), (facts, length, seed) => {
        const sheet = build({ kept: facts, length, seed });
        sheet.forEach((fact, at) => {
          expect(sheet.slice(Math.max(0, at - 3), at)).not.toContain(fact);
        });
      }),
    );
  });

  test('is the same from the same seed, and another from another', () => {
    expect(build({ kept: everyId, seed: 5 })).toEqual(build({ kept: everyId, seed: 5 }));
    expect(build({ kept: everyId, seed: 5 })).not.toEqual(build({ kept: everyId, seed: 6 }));
  });

  test('is none where nothing is kept, or nothing known to the tool', () => {
    expect(buildLookBack(order({ kept: [] }))).toBeNull();
    expect(buildLookBack(order({ kept: ['mul-40-3'] }))).toBeNull();
  });
});

describe('what has faded', () => {
  /** How often a fact is on sheets of five from many seeds. */
  const share = (facts: ReadonlyMap<FactId, FactSummary>, fact: FactId, kept = times2) => {
    const seeds = Array.from({ length: 400 }, (_, seed) => seed);
    return (
      seeds.filter((seed) => build({ kept, facts, length: 5, seed }).includes(fact)).length / seeds.length
    );
  };
  const all = new Map(times2.map((fact) => [fact, fresh] as const));

  test('is likelier on the sheet than what is fresh', () => {
    const facts = new Map(all).set('mul-2-7', old);
    expect(share(facts, 'mul-2-7')).toBeGreaterThan(2 * share(all, 'mul-2-7'));
    expect(share(facts, 'mul-2-7')).toBeLessThan(1);
  });

  test('answered but never right is on every sheet', () => {
    expect(share(new Map(all).set('mul-2-7', neverRight), 'mul-2-7')).toBe(1);
  });

  test('ticked and never asked does not crowd the others out', () => {
    const unasked = everyId.filter((id) => id.startsWith('add-')).slice(0, 20);
    const facts = new Map([['mul-2-7', old] as const]);
    const seen = share(facts, 'mul-2-7', [...unasked, 'mul-2-7']);
    expect(seen).toBeGreaterThan(5 / 21);
  });

  test('twice as heavy is drawn first twice as often', () => {
    // Ages of 16 days and of 4: √16 is twice √4.
    const facts = new Map([
      ['mul-2-3', knownOn('2026-05-16')],
      ['mul-2-4', knownOn('2026-05-28')],
    ] as const);
    const seeds = Array.from({ length: 3000 }, (_, seed) => seed);
    const heavy = seeds.filter((seed) => {
      return build({ kept: ['mul-2-3', 'mul-2-4'], facts, length: 1, seed })[0] === 'mul-2-3';
    }).length;
    // Three standard errors of 2/3 in 3,000.
    expect(Math.abs(heavy / 3000 - 2 / 3)).toBeLessThan(0.026);
  });

  test('is asked in the end: within a dozen look-backs every kept fact has come', () => {
    const kept = everyId.slice(0, 90);
    const facts = new Map(kept.map((fact) => [fact, old] as const));
    const seen = new Set<FactId>();
    for (let week = 0; week < 12; week += 1) {
      const day = new Date(Date.UTC(2026, 1, 2 + 7 * week)).toISOString().slice(0, 10);
      for (const fact of build({ kept, facts, today: day, seed: week })) {
        seen.add(fact);
        facts.set(fact, knownOn('2026-01-12', day));
      }
    }
    expect(seen.size).toBe(kept.length);
  });
});
