import type { Fact } from '../../src/core/fact/fact';
import { knownFact } from '../../src/core/fact/fact-list';
import type { Day } from '../../src/core/record/stamp';
import type { FactSummary } from '../../src/core/summary/summary';

/** The fact of that id; a test that names none is wrong itself. */
export function known(id: string): Fact {
  const fact = knownFact(id);
  if (!fact) throw new Error(`no fact ${id}`);
  return fact;
}

/** A fact's summary after right answers on these days, the oldest first, and no others. */
export function knownOn(...days: readonly Day[]): FactSummary {
  return {
    rightDays: days.length,
    firstRight: days[0] ?? null,
    lastRight: days.slice(-4),
    seen: days.length,
    lastSeen: days.at(-1) ?? '2026-01-01',
    recent: '1'.repeat(Math.min(8, days.length)),
  };
}
