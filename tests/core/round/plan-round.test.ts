import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { knownFact } from '../../../src/core/fact/fact-list';
import { turnAround } from '../../../src/core/fact/family';
import { planRound, type RoundOrder } from '../../../src/core/round/plan-round';
import { setById, teachingSets } from '../../../src/core/set/teaching-sets';
import type { FactSummary, RoundSummary } from '../../../src/core/summary/summary';
import { knownOn } from '../known';

const times7 = setById('times-7')?.facts ?? [];
const doubles = setById('times-2')?.facts ?? [];
const right = knownOn('2026-03-01', '2026-03-02', '2026-03-03');
const wrong: FactSummary = { ...knownOn(), seen: 1, recent: '0' };
const all = (facts: readonly FactId[], summary: FactSummary) => facts.map((fact) => [fact, summary] as const);

function order(over: Partial<RoundOrder> = {}): RoundOrder {
  return {
    today: '2026-03-10',
    set: times7,
    kept: doubles,
    ticked: new Set(),
    summary: { facts: new Map(all(doubles, right)), rounds: [] },
    fixedNew: null,
    budgetMs: 1_200_000,
    mostCards: 300,
    cardMs: 4000,
    seed: 7,
    ...over,
  };
}

function waiting(...facts: readonly FactId[]): RoundSummary {
  return { day: '2026-03-09', waiting: facts, taken: 0, missed: [] };
}

describe('new facts', () => {
  test('are the first of the set the child has not, each with its turn-around behind it', () => {
    expect(planRound(order())?.fresh).toEqual(['mul-1-7', 'mul-7-1', 'mul-3-7', 'mul-7-3']);
  });

  test('that did not stay come again before any other', () => {
    const judged = { ...waiting(), missed: ['mul-6-7', 'mul-8-7'] as const };
    const round = planRound(order({ summary: { facts: new Map(all(doubles, right)), rounds: [judged] } }));
    expect(round?.fresh).toEqual(['mul-6-7', 'mul-7-6', 'mul-8-7']);
  });

  test('are never those an earlier day taught before they were asked again: these lead the known ones', () => {
    const taught = ['mul-6-7', 'mul-7-6'] as const;
    const facts = new Map(all(doubles, right));
    const round = planRound(order({ summary: { facts, rounds: [waiting(...taught)] } }));
    for (const fact of taught) expect(round?.fresh).not.toContain(fact);
    const asked = round?.cards.filter(({ fact }) => fact === 'mul-6-7' || fact === 'mul-7-6') ?? [];
    expect(asked[0]).toEqual({ fact: round?.cards[1]?.fact, isNew: false });
    expect(asked.every(({ isNew }) => !isNew)).toBe(true);
  });

  test('are never facts the child has, by its answers or by the parent’s word', () => {
    const [first, second, ...rest] = times7;
    if (!first || !second) throw new Error('times-7 has facts');
    const facts = new Map([...all(doubles, right), [first, right] as const, ...all(rest, wrong)]);
    const round = planRound(order({ ticked: new Set([second]), summary: { facts, rounds: [] } }));
    expect(round?.fresh).not.toContain(first);
    expect(round?.fresh).not.toContain(second);
    expect(round?.fresh).toHaveLength(4);
  });

  test('are as many as the parent fixed', () => {
    expect(planRound(order({ fixedNew: 6 }))?.fresh).toHaveLength(6);
  });
});

describe('known facts', () => {
  test('are facts the child has, none the turn-around of a new one', () => {
    const round = planRound(order({ kept: [...doubles, 'mul-9-9'] }));
    const fresh = new Set(round?.fresh);
    for (const { fact } of round?.cards ?? []) {
      if (fresh.has(fact)) continue;
      expect(doubles).toContain(fact);
      const known = knownFact(fact);
      const partner = known && turnAround(known);
      expect(partner ? fresh.has(partner.id) : false).toBe(false);
    }
  });

  test('that are secure come before those only ticked, and these before the uneven', () => {
    const [a, b, c] = ['mul-2-3', 'mul-2-4', 'mul-2-5'] as const;
    const facts = new Map<FactId, FactSummary>([
      [a, { ...right, recent: '101' }],
      [c, right],
    ]);
    const round = planRound(
      order({ kept: [a, c], ticked: new Set([b]), summary: { facts, rounds: [] }, fixedNew: 2 }),
    );
    expect(round?.cards.map(({ fact }) => fact).slice(0, 9)).toEqual([
      ...['mul-1-7', c],
      ...['mul-1-7', c, b],
      ...['mul-1-7', c, b, a],
    ]);
  });

  test('may be none at all', () => {
    const bare = order({ kept: [], summary: { facts: new Map(), rounds: [] } });
    expect(planRound(bare)?.cards.slice(0, 2)).toEqual([
      { fact: 'mul-1-7', isNew: true },
      { fact: 'mul-1-7', isNew: false },
    ]);
  });
});

describe('once the child has every fact of the set', () => {
  const facts = new Map([...all(doubles, right), ...all(times7, right)]);
  const weak = knownOn('2026-01-05');

  test('nothing is shown, and the weakest take the part of the new', () => {
    const summary = { facts: new Map(facts).set('mul-8-7', weak), rounds: [] };
    const round = planRound(order({ summary }));
    expect(round?.fresh).toEqual([]);
    expect(round?.cards.some(({ isNew }) => isNew)).toBe(false);
    expect(round?.cards[0]?.fact).toBe('mul-8-7');
  });
});

test('without time or without a set there is no round', () => {
  expect(planRound(order({ budgetMs: 0 }))).toBeNull();
  expect(planRound(order({ set: [] }))).toBeNull();
});

const anyOrder: fc.Arbitrary<RoundOrder> = fc
  .record({
    set: fc.constantFrom(...teachingSets.map(({ facts }) => facts)),
    kept: fc.constantFrom(...teachingSets.map(({ facts }) => facts)),
    had: fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
    fixedNew: fc.option(fc.integer({ min: 2, max: 8 })),
    budgetMs: fc.integer({ min: 0, max: 900_000 }),
    mostCards: fc.integer({ min: 2, max: 250 }),
    seed: fc.nat(),
  })
  .map(({ had, ...over }) => {
    const answered = [...over.kept, ...over.set].slice(0, 40);
    const facts = new Map(answered.map((fact, at) => [fact, had[at] ? right : wrong] as const));
    return order({ ...over, summary: { facts, rounds: [] } });
  });

test('any round keeps its bounds, shows each new fact once and first, and is the same again', () => {
  fc.assert(
    fc.property(anyOrder, (given) => {
      const round = planRound(given);
      expect(planRound(given)).toEqual(round);
      if (!round) return;
      expect(round.cards.length).toBeLessThanOrEqual(given.mostCards);
      expect(round.fresh.length).toBeLessThanOrEqual(8);
      const shown = round.cards.flatMap(({ fact, isNew }) => (isNew ? [fact] : []));
      expect(shown).toEqual(round.fresh);
      for (const fact of round.fresh) {
        expect(given.set).toContain(fact);
        expect(round.cards.find((card) => card.fact === fact)?.isNew).toBe(true);
      }
    }),
  );
});
