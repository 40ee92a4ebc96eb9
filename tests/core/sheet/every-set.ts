import { expect, test } from 'vitest';
import type { FactId, Operation } from '../../../src/core/fact/fact';
import type { FactSet } from '../../../src/core/set/fact-set';
import { defaultOrder } from '../../../src/core/set/teaching-sets';
import { buildSheet, type KeptFact, type SheetOrder } from '../../../src/core/sheet/build-sheet';
import { brokenRules, hasPartner } from './sheet-rules';

export const seedsPerSet = 10_000;
const lengths = Array.from({ length: 20 }, (_, i) => 5 * (i + 1));
const noneMet: ReadonlyMap<FactId, number> = new Map();

/** The facts of the three sets before one, each seen on another day; for a first set none. */
function keptBefore(set: FactSet, before: readonly FactSet[]): readonly KeptFact[] {
  const facts = new Set(before.slice(-3).flatMap((other) => other.facts));
  return [...facts]
    .filter((fact) => !set.facts.includes(fact))
    .map((fact, i) => ({ fact, lastSeen: (i * 7) % 11, weakness: (i * 5) % 3 }));
}

/** Every fifth seed has another length than 25, so that each of them comes up. */
const lengthFor = (seed: number) => (seed % 5 === 0 ? (lengths[(seed / 5) % 20] ?? 25) : 25);

/** Builds sheets of every teaching set of an operation, and lists the rules broken where they could hold. */
export function checkEverySet(op: Operation): void {
  const sets = defaultOrder(op, 12);
  const rows = sets.map((set, i) => [set.id, set, sets.slice(0, i)] as const);
  test.each(rows)('%s', { timeout: 60_000 }, (_, set, before) => {
    const kept = keptBefore(set, before);
    const hasOnlyPairs = set.facts.every(hasPartner);
    const surprises = new Map<string, number>();
    for (let seed = 0; seed < seedsPerSet; seed++) {
      const length = lengthFor(seed);
      const keptShare = Math.round(length * 0.2) <= kept.length ? 0.2 : 0;
      const order: SheetOrder = { set: set.facts, kept, length, keptShare, seed, met: noneMet };
      const fromSet = length - Math.round(length * keptShare);
      for (const rule of brokenRules(buildSheet(order).facts, order)) {
        // Pairs alone can't fill an odd number of places on a sheet shorter than the set.
        const unavoidable =
          rule === 'half a pair' && hasOnlyPairs && fromSet % 2 === 1 && fromSet < set.facts.length;
        const key = `${rule} at ${length}, seed ${seed}`;
        if (!unavoidable) surprises.set(key, (surprises.get(key) ?? 0) + 1);
      }
    }
    expect([...surprises].slice(0, 5)).toEqual([]);
  });
}
