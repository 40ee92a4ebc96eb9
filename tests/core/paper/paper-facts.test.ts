import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FactId, parseFact } from '../../../src/core/fact/fact';
import { codeOf, paperSeeds, readCode } from '../../../src/core/paper/paper-code';
import { freePaperSeed, paperFacts } from '../../../src/core/paper/paper-facts';
import { setById, teachingSets } from '../../../src/core/set/teaching-sets';

const anySet = fc.constantFrom(...teachingSets);
const seed = fc.nat(paperSeeds - 1);
const length = fc.integer({ min: 1, max: 20 }).map((rows) => rows * 5);

test('a sheet without kept facts comes from its code alone, on any device and any day', () => {
  fc.assert(
    fc.property(anySet, seed, length, (set, seed, length) => {
      const sheet = { set: set.id, seed, shape: { length, layout: 'across' as const, hasKept: false } };
      const printed = paperFacts(sheet, set.facts, [], 0.2);
      const again = readCode(codeOf(sheet), []);
      if (typeof again === 'string') throw new Error(again);
      expect(paperFacts(again, setById(again.set)?.facts ?? [], [], 0)).toEqual(printed);
      expect(printed).toHaveLength(length);
      expect(printed.every((fact) => set.facts.includes(fact))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('kept facts are mixed in by the child’s share', () => {
  const set = setById('times-7')?.facts ?? [];
  const kept = (setById('plus-2')?.facts ?? []).map((fact) => ({ fact, lastSeen: 1, weakness: 0.5 }));
  const shape = { length: 25, layout: 'across', hasKept: true } as const;
  const facts = paperFacts({ set: 'times-7', seed: 12, shape }, set, kept, 0.2);
  const isKept = (fact: FactId) => parseFact(fact)?.op === 'add';
  expect(facts.filter(isKept)).toHaveLength(5);
});

test('a seed that a sheet of the set has is not given again', () => {
  const printed: { set: string; seed: number }[] = [];
  for (let sheets = 0; sheets < 300; sheets += 1) {
    printed.push({ set: 'times-7', seed: freePaperSeed('teo', '2026-11-25', 'times-7', printed) });
  }
  expect(new Set(printed.map(({ seed }) => seed)).size).toBe(300);
  expect(printed.every(({ seed }) => seed >= 0 && seed < paperSeeds)).toBe(true);
});
