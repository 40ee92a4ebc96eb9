import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { setById } from '../../../src/core/set/teaching-sets';
import {
  buildSheet,
  isSheetLength,
  type KeptFact,
  type SheetOrder,
} from '../../../src/core/sheet/build-sheet';
import { known } from '../known';
import { brokenRules, hasPartner } from './sheet-rules';

const everyId = (['add', 'sub', 'mul', 'div'] as const).flatMap((op) =>
  factsOf(op, 12).map((fact) => fact.id),
);
const factsIn = (id: string): readonly FactId[] => setById(id)?.facts ?? [];
const keep = (facts: readonly FactId[]): readonly KeptFact[] =>
  facts.map((fact) => ({ fact, lastSeen: 10, weakness: 0 }));
const order = (changes: Partial<SheetOrder>): SheetOrder => ({
  set: factsIn('times-5'),
  kept: keep(factsIn('divide-by-2')),
  length: 25,
  keptShare: 0.2,
  seed: 1,
  met: new Map(),
  ...changes,
});
const countOf = (facts: readonly FactId[], id: FactId) => facts.filter((fact) => fact === id).length;

const seed = fc.integer();
const length = fc.integer({ min: 1, max: 20 }).map((rows) => rows * 5);
const ownFacts = fc.subarray(everyId, { minLength: 6, maxLength: 20 });
const keptFacts = fc
  .subarray(everyId, { maxLength: 40 })
  .chain((facts) =>
    fc.tuple(
      ...facts.map((fact) =>
        fc.record({ fact: fc.constant(fact), lastSeen: fc.nat(5), weakness: fc.nat(3) }),
      ),
    ),
  );

describe('any set of 6 to 20 facts, any kept facts, any length, any seed', () => {
  test('a rule is broken only where the sheet says it was relaxed', () => {
    const reported = {
      'an answer twice running': 'equalAnswers',
      'kept share': 'keptShare',
      'half a pair': 'turnArounds',
    } as Record<string, string>;
    fc.assert(
      fc.property(
        ownFacts,
        keptFacts,
        length,
        fc.constantFrom(0, 0.1, 0.2, 0.5),
        seed,
        (set, kept, long, keptShare, s) => {
          const others = kept.filter(({ fact }) => !set.includes(fact));
          const wish = order({ set, kept, length: long, keptShare, seed: s });
          const { facts, relaxed } = buildSheet(wish);
          const broken = new Set(brokenRules(facts, { ...wish, kept: others }));
          expect([...broken].map((rule) => reported[rule] ?? rule).toSorted()).toEqual(
            [...relaxed].toSorted(),
          );
        },
      ),
      { numRuns: 500 },
    );
  });

  test('an answer comes twice running only where it has more than half of the cards', () => {
    const fewAnswers = everyId.filter((id) => [10, 12, 18].includes(known(id).answer));
    const facts = fc.subarray(fewAnswers, { minLength: 6, maxLength: 20 });
    fc.assert(
      fc.property(facts, length, seed, (set, long, s) => {
        const { facts: cards, relaxed } = buildSheet(order({ set, length: long, seed: s }));
        const most = Math.max(
          ...[10, 12, 18].map((answer) => cards.filter((id) => known(id).answer === answer).length),
        );
        expect(relaxed.includes('equalAnswers')).toBe(most > Math.ceil(long / 2));
      }),
      { numRuns: 500 },
    );
  });

  test('the same order gives the same sheet', () => {
    fc.assert(
      fc.property(ownFacts, keptFacts, length, seed, (set, kept, long, s) => {
        const wish = order({ set, kept, length: long, seed: s });
        expect(buildSheet(wish)).toEqual(buildSheet(structuredClone(wish)));
      }),
    );
  });

  test('the kept facts are those longest unseen, ties by weakest', () => {
    fc.assert(
      fc.property(ownFacts, keptFacts, length, seed, (set, kept, long, s) => {
        const others = kept.filter(({ fact }) => !set.includes(fact));
        const { facts } = buildSheet(order({ set, kept, length: long, seed: s }));
        const [came, stayed] = [true, false].map((isOn) =>
          others.filter(({ fact }) => facts.includes(fact) === isOn),
        );
        for (const one of came ?? []) {
          for (const other of stayed ?? []) {
            expect(one.lastSeen).toBeLessThanOrEqual(other.lastSeen);
            if (one.lastSeen === other.lastSeen) expect(one.weakness).toBeGreaterThanOrEqual(other.weakness);
          }
        }
      }),
    );
  });
});

describe('a sheet of 25', () => {
  test('has 20 cards of the set and 5 kept ones', () => {
    const { facts, relaxed } = buildSheet(order({}));
    expect(facts.filter((id) => id.startsWith('mul'))).toHaveLength(20);
    expect(facts.filter((id) => id.startsWith('div'))).toHaveLength(5);
    expect(relaxed).toEqual([]);
  });

  test('of a set of 12 has eight facts twice and four once', () => {
    const set = factsIn('times-0-and-1-to-12');
    const { facts } = buildSheet(order({ set }));
    const counts = set.map((id) => countOf(facts, id));
    expect(counts.toSorted()).toEqual([1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2]);
  });

  test('is another one from another seed', () => {
    const sheets = Array.from({ length: 100 }, (_, s) => buildSheet(order({ seed: s })).facts.join());
    expect(new Set(sheets).size).toBe(100);
  });

  test('stays the same from version to version, so that a printed sheet and its key agree', () => {
    const { facts } = buildSheet(order({ length: 10, seed: 2026 }));
    expect(facts).toMatchInlineSnapshot(`
      [
        "mul-5-4",
        "div-10-2",
        "mul-6-5",
        "div-14-2",
        "mul-5-8",
        "mul-4-5",
        "mul-5-6",
        "mul-9-5",
        "mul-8-5",
        "mul-5-9",
      ]
    `);
  });
});

describe('facts that cannot all come', () => {
  test('come in pairs of turn-arounds', () => {
    for (let s = 0; s < 200; s++) {
      const { facts, relaxed } = buildSheet(order({ set: factsIn('mix-mul'), seed: s }));
      const ofSet = facts.filter((id) => id.startsWith('mul'));
      for (const id of ofSet) expect(ofSet).toContain(`mul-${known(id).b}-${known(id).a}`);
      expect(relaxed).toEqual([]);
    }
  });

  test('come by turns: all 100 of the mix within a week', () => {
    const set = factsIn('mix-mul');
    const met = new Map<FactId, number>();
    for (let day = 0; day < 6; day++) {
      const { facts } = buildSheet(order({ set, kept: [], keptShare: 0, length: 20, seed: day, met }));
      for (const id of facts) met.set(id, (met.get(id) ?? 0) + 1);
    }
    expect(set.filter((id) => !met.has(id))).toEqual([]);
  });

  test('a tie alone among pairs is not left out for good', () => {
    const set = factsIn('times-5');
    expect(set.filter((id) => !hasPartner(id))).toEqual(['mul-5-5']);
    const met = new Map<FactId, number>();
    for (let day = 0; day < 12; day++) {
      const { facts } = buildSheet(order({ set, length: 10, seed: day, met }));
      for (const id of facts) met.set(id, (met.get(id) ?? 0) + 1);
    }
    const times = set.map((id) => met.get(id) ?? 0);
    expect(Math.min(...times)).toBeGreaterThanOrEqual(4);
    expect(Math.max(...times) - Math.min(...times)).toBeLessThanOrEqual(2);
  });
});

describe('where a rule cannot hold', () => {
  const six = factsIn('from-ten').slice(0, 6);

  test('a set of six without kept facts fills its sheet, and only the share gives way', () => {
    const { facts, relaxed } = buildSheet(order({ set: six, kept: [], length: 5 }));
    expect(new Set(facts).size).toBe(5);
    expect(relaxed).toEqual(['keptShare']);
  });

  test('no share is wanted, none is missed', () => {
    expect(buildSheet(order({ set: six, kept: [], keptShare: 0 })).relaxed).toEqual([]);
  });

  test('too few kept facts come once each, and the set takes their places', () => {
    const { facts, relaxed } = buildSheet(order({ kept: keep(['div-8-2', 'div-6-2']) }));
    expect(facts).toHaveLength(25);
    expect([countOf(facts, 'div-8-2'), countOf(facts, 'div-6-2')]).toEqual([1, 1]);
    expect(relaxed).toEqual(['keptShare']);
  });

  test('a kept fact that is in the set too counts as the set’s', () => {
    const { facts, relaxed } = buildSheet(order({ set: six, kept: keep(six), length: 30 }));
    expect(six.map((id) => countOf(facts, id))).toEqual([5, 5, 5, 5, 5, 5]);
    expect(relaxed).toEqual(['keptShare']);
  });

  test('a set of two facts from old data alternates', () => {
    const { facts, relaxed } = buildSheet(order({ set: ['mul-6-7', 'mul-8-4'], kept: [], length: 10 }));
    expect(facts.filter((id, i) => id === facts[i - 1])).toEqual([]);
    expect(relaxed).toEqual(['keptShare', 'apart']);
  });

  test('a set of one fact still makes a sheet', () => {
    const { facts, relaxed } = buildSheet(order({ set: ['mul-6-7'], kept: [], length: 5, keptShare: 0 }));
    expect(facts).toEqual(['mul-6-7', 'mul-6-7', 'mul-6-7', 'mul-6-7', 'mul-6-7']);
    expect(relaxed).toEqual(['apart', 'equalAnswers']);
  });

  test('a set whose answers are all alike says so', () => {
    const set = factsOf('add')
      .filter((fact) => fact.answer === 9)
      .map((fact) => fact.id);
    expect(buildSheet(order({ set, kept: [], keptShare: 0, length: 10 })).relaxed).toEqual(['equalAnswers']);
  });

  test('without a set the kept facts stand in, the longest unseen first', () => {
    const kept = factsIn('squares').map((fact, i) => ({ fact, lastSeen: -i, weakness: 0 }));
    const { facts, relaxed } = buildSheet(order({ set: [], kept, length: 5 }));
    expect(facts.toSorted()).toEqual(['mul-5-5', 'mul-6-6', 'mul-7-7', 'mul-8-8', 'mul-9-9']);
    expect(relaxed).toEqual([]);
  });

  test('without any fact there is no sheet, and no exception', () => {
    expect(buildSheet(order({ set: [], kept: [] }))).toEqual({ facts: [], relaxed: ['length'] });
  });

  test('ids that name no fact of the tool, and repeated ones, are passed over', () => {
    const set: readonly FactId[] = [...six, 'mul-99-9', ...six];
    const { facts } = buildSheet(order({ set, kept: keep(['add-500-1']), length: 30 }));
    expect(six.map((id) => countOf(facts, id))).toEqual([5, 5, 5, 5, 5, 5]);
  });

  test('a fact never seen is the longest unseen', () => {
    const kept: readonly KeptFact[] = [
      ...keep(factsIn('divide-by-2')),
      { fact: 'div-81-9', lastSeen: Number.NEGATIVE_INFINITY, weakness: 0 },
      { fact: 'div-72-9', lastSeen: Number.NEGATIVE_INFINITY, weakness: 1 },
    ];
    expect(buildSheet(order({ kept, length: 5 })).facts).toContain('div-72-9');
    expect(buildSheet(order({ kept, length: 10 })).facts).toContain('div-81-9');
  });
});

test('a sheet is a multiple of five from 5 to 100', () => {
  const lengths = Array.from({ length: 120 }, (_, i) => i - 5).filter(isSheetLength);
  expect(lengths).toEqual(Array.from({ length: 20 }, (_, i) => 5 * (i + 1)));
  expect([7.5, Number.NaN, Number.POSITIVE_INFINITY].filter(isSheetLength)).toEqual([]);
});

test('the judge of these sheets finds each broken rule', () => {
  const set: readonly FactId[] = ['mul-2-6', 'mul-6-2', 'mul-3-4', 'mul-4-3', 'mul-2-9', 'mul-9-2'];
  const judge = (facts: readonly FactId[], changes: Partial<SheetOrder> = {}) => [
    ...new Set(
      brokenRules(facts, order({ set, kept: keep(['div-8-2']), length: 6, keptShare: 0, ...changes })),
    ),
  ];
  expect(judge(['mul-2-6', 'mul-2-9', 'mul-6-2', 'mul-9-2', 'mul-3-4'], { length: 5 })).toEqual([
    'half a pair',
  ]);
  expect(judge(set)).toEqual(['an answer twice running']);
  const apart: readonly FactId[] = [
    'mul-2-6',
    'mul-2-9',
    'mul-6-2',
    'mul-9-2',
    'mul-3-4',
    'div-8-2',
    'mul-4-3',
  ];
  expect(judge(apart, { length: 7, keptShare: 0.2 })).toEqual([]);
  expect(judge(apart, { length: 7 })).toEqual(['kept share']);
  expect(judge(apart, { keptShare: 0.2 })).toEqual(['length']);
  expect(judge([...apart, 'div-6-2'], { length: 8, keptShare: 0.1 })).toEqual(['a stranger']);
  expect(judge([...apart, 'mul-3-4'], { length: 8, keptShare: 0.1 })).toEqual([
    'a fact within three cards',
    'an answer twice running',
  ]);
  expect(judge([...apart, 'div-8-2'], { length: 8, keptShare: 0.25 })).toEqual([
    'a fact within three cards',
    'a kept fact twice',
  ]);
  const again: readonly FactId[] = [...apart, 'mul-2-9', 'mul-2-6', 'div-8-2', 'mul-3-4', 'mul-2-9'];
  expect(judge(again, { length: 12, keptShare: 0.17 })).toContain('counts more than one apart');
});
