import { type FactId, parseFact } from '../fact/fact';
import type { Marked, MarkedPlace } from './marked';

/** A fact to put right, with what the child gave last; `null` where it was skipped. */
export interface Miss {
  readonly fact: FactId;
  readonly gave: string | null;
}

/**
 * Facts wrong or skipped on a sheet or in what followed it (rows, mending) and not right since, each once, in the
 * order of first missing. Not reached is no miss.
 */
export function missesToMend(sheet: Marked, later: readonly Marked[]): readonly Miss[] {
  const open = new Map<FactId, Miss>();
  for (const { places } of [sheet, ...later]) {
    const missed = places.filter(isMiss);
    for (const { prompt, outcome } of places) {
      const fact = parseFact(prompt)?.id;
      if (fact && outcome === 'right') open.delete(fact);
    }
    for (const { prompt, given } of missed) {
      const fact = parseFact(prompt)?.id;
      if (fact) open.set(fact, { fact, gave: given });
    }
  }
  return [...open.values()];
}

/** Wrong or skipped. */
export function isMiss({ outcome }: MarkedPlace): boolean {
  return outcome === 'wrong' || outcome === 'skipped';
}
