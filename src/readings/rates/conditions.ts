import type { OnsetSource, Sat, Via, Visit } from '../../core/record/sat';
import type { Sight } from '../../core/record/settings';
import type { Id } from '../../core/record/stamp';
import { isDigit, ownKeys } from '../hand-time/digit-gaps';

/** All that must stay the same for two sittings to be set side by side. */
export interface Conditions {
  readonly set: Id | null;
  readonly length: number;
  /** `null` without a clock. */
  readonly allowanceMs: number | null;
  readonly sight: Sight | null;
  readonly takesItself: boolean;
  readonly entry: Via | 'mixed' | 'none';
  readonly device: Id;
  readonly onsetBy: OnsetSource | 'mixed' | 'none';
}

/** A source or a way of entry stands for a sitting when it made this share of it (our own decision, no source). */
const standsFor = 0.9;

/** Under which conditions a sitting was sat. */
export function conditionsOf(sat: Sat): Conditions {
  const seen = sat.visits.filter(({ end }) => end !== 'left');
  return {
    set: sat.set,
    length: sat.prompts.length,
    allowanceMs: sat.clock?.allowanceMs ?? null,
    sight: sat.clock?.sight ?? null,
    takesItself: sat.takesItself && sat.clock !== null,
    entry: commonest(seen.flatMap(viasOf)),
    device: sat.device,
    onsetBy: commonest(seen.map(({ onsetBy }) => onsetBy)),
  };
}

/** What differs between the conditions of two sittings; empty when they can be set side by side. */
export function differences(one: Conditions, other: Conditions): readonly (keyof Conditions)[] {
  return (Object.keys(one) as (keyof Conditions)[]).filter((key) => one[key] !== other[key]);
}

function viasOf(visit: Visit): readonly Via[] {
  return ownKeys(visit)
    .filter(isDigit)
    .map(([, , via]) => via);
}

function commonest<T extends string>(values: readonly T[]): T | 'mixed' | 'none' {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const [most] = [...counts].sort(([, x], [, y]) => y - x);
  if (!most) return 'none';
  return most[1] >= standsFor * values.length ? most[0] : 'mixed';
}
