import type { Entry, OnsetSource, Sat, Via } from '../../core/record/sat';
import type { Sight } from '../../core/record/settings';
import type { Id } from '../../core/record/stamp';
import { isDigit } from '../hand-time/digit-gaps';

/** All that must stay the same for two sittings to be set side by side. */
export interface Conditions {
  readonly set: Id | null;
  readonly length: number;
  /** `null` without a clock. */
  readonly allowanceMs: number | null;
  readonly sight: Sight | null;
  readonly takesItself: boolean;
  readonly entry: Entry | 'mixed' | 'none';
  /** The device it was sat on; `paper` for all paper, wherever it was entered. */
  readonly device: Id;
  readonly onsetBy: OnsetSource | 'mixed' | 'none';
}

/** A source or a way of entry stands for a sitting when it made this share of it (our own decision, no source). */
const standsFor = 0.9;

/**
 * Whether a sitting is a sheet like any other. A look-back and the halves of a spread ask other facts than the set's: they
 * stand in no line, and break none.
 */
export function isPlainSheet({ purpose, lookBack, spread }: Sat): boolean {
  return purpose === 'sheet' && !lookBack && !spread;
}

/** Under which conditions a sitting was sat. */
export function conditionsOf(sat: Sat): Conditions {
  const vias: Counts<Via> = { touch: 0, keys: 0 };
  const sources: Counts<OnsetSource> = { element: 0, elementCoarse: 0, frame: 0 };
  for (const visit of sat.visits) {
    if (visit.end === 'left' || visit.onsetBy === 'paper') continue;
    sources[visit.onsetBy] += 1;
    let left = visit.keys.length - (visit.late ?? 0);
    for (const key of visit.keys) {
      if (left > 0 && isDigit(key)) vias[key[2]] += 1;
      left -= 1;
    }
  }
  return {
    set: sat.set,
    length: sat.prompts.length,
    allowanceMs: sat.clock?.allowanceMs ?? null,
    sight: sat.clock?.sight ?? null,
    takesItself: sat.takesItself && sat.clock !== null,
    entry: sat.paper ? 'paper' : commonest(vias),
    device: sat.paper ? 'paper' : sat.device,
    onsetBy: commonest(sources),
  };
}

/** What differs between the conditions of two sittings; empty when they can be set side by side. */
export function differences(one: Conditions, other: Conditions): readonly (keyof Conditions)[] {
  return (Object.keys(one) as (keyof Conditions)[]).filter((key) => one[key] !== other[key]);
}

type Counts<T extends string> = Record<T, number>;

function commonest<T extends string>(counts: Counts<T>): T | 'mixed' | 'none' {
  let [of, most]: [number, T | null] = [0, null];
  for (const one in counts) {
    of += counts[one];
    if (most === null || counts[one] > counts[most]) most = one;
  }
  if (most === null || of === 0) return 'none';
  return counts[most] >= standsFor * of ? most : 'mixed';
}
