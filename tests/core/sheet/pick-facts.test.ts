import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fact, FactId } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { setById } from '../../../src/core/set/teaching-sets';
import { makeDice } from '../../../src/core/sheet/dice';
import { type Picking, pickFacts } from '../../../src/core/sheet/pick-facts';
import { known } from '../known';

const factsIn = (id: string): readonly Fact[] => (setById(id)?.facts ?? []).map(known);
const pick = (seed: number, changes: Partial<Picking>): readonly Fact[] =>
  pickFacts(
    {
      facts: factsIn('plus-9'),
      count: 8,
      inPairs: false,
      met: new Map(),
      beside: [],
      mostAlike: 100,
      ...changes,
    },
    makeDice(seed),
  );
const ids = (facts: readonly Fact[]) => facts.map((fact) => fact.id);
const seeds = Array.from({ length: 200 }, (_, i) => i);

describe('picked facts', () => {
  test('are as many as asked for, each once, all from the set', () => {
    const wish = fc.tuple(
      fc.subarray([...factsOf('mul', 12)], { minLength: 1 }),
      fc.nat(),
      fc.boolean(),
      fc.integer(),
    );
    fc.assert(
      fc.property(wish, ([facts, number, inPairs, seed]) => {
        const count = number % facts.length;
        const picked = pick(seed, { facts, count, inPairs, mostAlike: 3 });
        expect(new Set(picked).size).toBe(count);
        expect(picked.filter((fact) => !facts.includes(fact))).toEqual([]);
      }),
    );
  });

  test('are the least met, whatever the dice', () => {
    const facts = factsIn('divide-by-7');
    const met = new Map<FactId, number>(facts.map((fact, i) => [fact.id, i < 4 ? 2 : 3]));
    for (const seed of seeds) {
      expect(ids(pick(seed, { facts, count: 4, met })).toSorted()).toEqual(ids(facts.slice(0, 4)).toSorted());
    }
  });

  test('are each picked about as often where none is due', () => {
    const facts = factsIn('halves');
    const counts = new Map<string, number>();
    for (let seed = 0; seed < 4000; seed++) {
      for (const id of ids(pick(seed, { facts, count: 5 }))) counts.set(id, (counts.get(id) ?? 0) + 1);
    }
    // Half of 4000 by chance, standard deviation 32.
    for (const count of counts.values()) expect(Math.abs(count - 2000)).toBeLessThan(160);
    expect(counts.size).toBe(10);
  });
});

describe('in pairs', () => {
  const isWhole = (picked: readonly Fact[]) =>
    picked.every((fact) => ids(picked).includes(`${fact.op as 'add'}-${fact.b}-${fact.a}`));

  test('an even number of places takes pairs alone and leaves the one tie out', () => {
    for (const seed of seeds) {
      const picked = pick(seed, { inPairs: true });
      expect(picked).toHaveLength(8);
      expect(isWhole(picked)).toBe(true);
    }
  });

  test('an odd number takes the tie', () => {
    for (const seed of seeds) expect(ids(pick(seed, { count: 7, inPairs: true }))).toContain('add-9-9');
  });

  test('a tie that is due more than the rest comes, and a pair is broken for it', () => {
    const met = new Map<FactId, number>(
      factsIn('plus-9').map((fact) => [fact.id, fact.id === 'add-9-9' ? 0 : 1]),
    );
    for (const seed of seeds) {
      const picked = pick(seed, { inPairs: true, met });
      expect(ids(picked)).toContain('add-9-9');
      expect(picked).toHaveLength(8);
    }
  });

  test('pairs alone break one pair for an odd number of places', () => {
    for (const seed of seeds) {
      const picked = pick(seed, { facts: factsIn('near-doubles'), count: 5, inPairs: true });
      const halves = picked.filter((fact) => !ids(picked).includes(`add-${fact.b}-${fact.a}`));
      expect([picked.length, halves.length]).toEqual([5, 1]);
    }
  });
});

describe('answers', () => {
  test('come no more often than allowed while others are left, those already on the sheet counted', () => {
    const facts = factsIn('times-0-and-1');
    const beside = [known('div-0-3'), known('sub-4-4')];
    for (const seed of seeds) {
      const picked = pick(seed, { facts, count: 10, beside, mostAlike: 6 });
      expect(picked.filter((fact) => fact.answer === 0).length).toBeLessThanOrEqual(4);
      expect(picked).toHaveLength(10);
    }
  });

  test('come more often where nothing else is left', () => {
    const facts = factsIn('times-0-and-1');
    const picked = pick(1, { facts, count: 18, mostAlike: 3 });
    expect(picked).toHaveLength(18);
    expect(picked.filter((fact) => fact.answer === 0).length).toBe(9);
  });
});
