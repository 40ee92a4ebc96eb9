import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { knownFact, operations } from '../../../src/core/fact/fact-list';
import { turnAround } from '../../../src/core/fact/family';
import { spreadFacts, spreadGroups } from '../../../src/core/spread/spread-facts';

const anyOps = fc.subarray([...operations], { minLength: 1 });
const seed = fc.nat();
const both = (ops: readonly Operation[], of: number) =>
  [spreadFacts(ops, 0, of), spreadFacts(ops, 1, of)] as const;

function fail(id: string): never {
  throw new Error(`no fact ${id}`);
}

describe('the two halves of a spread', () => {
  test('are sheets of 20 to 25 facts, for any choice of operations', () => {
    fc.assert(
      fc.property(anyOps, seed, (ops, of) => {
        for (const half of both(ops, of)) {
          expect(half.length).toBeGreaterThanOrEqual(20);
          expect(half.length).toBeLessThanOrEqual(25);
        }
      }),
    );
  });

  test('never ask a fact twice, on one day or over both', () => {
    fc.assert(
      fc.property(anyOps, seed, (ops, of) => {
        const all = both(ops, of).flat();
        expect(new Set(all).size).toBe(all.length);
      }),
    );
  });

  test('hold only basic facts of the operations chosen', () => {
    fc.assert(
      fc.property(anyOps, seed, (ops, of) => {
        for (const id of both(ops, of).flat()) expect(ops).toContain(knownFact(id)?.op);
      }),
    );
  });

  test('represent every group; each day too where there are no more groups than places', () => {
    fc.assert(
      fc.property(anyOps, seed, (ops, of) => {
        const halves = both(ops, of);
        const groups = spreadGroups(ops);
        for (const { facts } of groups) {
          const has = (ids: readonly string[]) => ids.some((id) => (facts as readonly string[]).includes(id));
          expect(has(halves.flat())).toBe(true);
          if (groups.length <= 20) expect(halves.every(has)).toBe(true);
        }
      }),
    );
  });

  test('are the same for the same seed, and others for another', () => {
    expect(spreadFacts(['add'], 0, 5)).toEqual(spreadFacts(['add'], 0, 5));
    expect(spreadFacts(['add'], 0, 5)).not.toEqual(spreadFacts(['add'], 0, 6));
  });

  test('never ask a fact and its turn-around where the groups have others enough', () => {
    fc.assert(
      fc.property(seed, (of) => {
        const all = new Set<string>(both(['add', 'mul'], of).flat());
        for (const id of all) {
          const partner = turnAround(knownFact(id) ?? fail(id));
          expect(partner !== null && all.has(partner.id)).toBe(false);
        }
      }),
    );
  });

  test('of no operation are empty', () => {
    expect(spreadFacts([], 0, 1)).toEqual([]);
  });

  test('hold no answer twice running where that can be avoided', () => {
    fc.assert(
      fc.property(seed, (of) => {
        const answers = spreadFacts(['mul'], 0, of).map((id) => knownFact(id)?.answer);
        expect(answers.filter((answer, at) => at > 0 && answer === answers[at - 1])).toEqual([]);
      }),
    );
  });
});

test('the groups looked into are those in the order taught, without the mixes and the option to 12s', () => {
  expect(spreadGroups(['mul', 'add']).map(({ op }) => op)).toEqual([
    ...Array.from({ length: 10 }, () => 'add'),
    ...Array.from({ length: spreadGroups(['mul']).length }, () => 'mul'),
  ]);
  for (const { kind, reach } of spreadGroups(operations)) expect([kind, reach]).toEqual(['group', 9]);
});
