import type { FactId } from '../fact/fact';
import { seedFor } from '../plan/seed';
import type { SheetPrinted } from '../record/household-record';
import type { Day, Id } from '../record/stamp';
import { buildSheet, type KeptFact } from '../sheet/build-sheet';
import { type PaperSheet, paperSeeds } from './paper-code';

/**
 * The facts of a sheet on paper. Without kept facts they follow from set, seed and length alone, so that the code is
 * enough to have them again; nothing that changes from day to day plays a part.
 */
export function paperFacts(
  { seed, shape }: PaperSheet,
  set: readonly FactId[],
  kept: readonly KeptFact[],
  keptShare: number,
): readonly FactId[] {
  const mixed = shape.hasKept ? { kept, keptShare } : { kept: [], keptShare: 0 };
  return buildSheet({ set, ...mixed, length: shape.length, seed, met: new Map() }).facts;
}

/** A seed no sheet on paper of the same set has so far; the same for the same child, day and sheets printed. */
export function freePaperSeed(
  child: Id,
  day: Day,
  set: Id,
  printed: readonly Pick<SheetPrinted, 'set' | 'seed'>[],
): number {
  const taken = new Set(printed.filter((one) => one.set === set).map(({ seed }) => seed));
  const first = seedFor(child, day, 'paper', printed.length) % paperSeeds;
  // In a house that printed all ten thousand of a set the first comes round again.
  for (let step = 0; step < paperSeeds; step += 1) {
    const seed = (first + step) % paperSeeds;
    if (!taken.has(seed)) return seed;
  }
  return first;
}
