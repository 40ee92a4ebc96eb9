import type { OnsetSource, Sat, Via } from '../../core/record/sat';
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
  readonly entry: Via | 'mixed' | 'none';
  readonly device: Id;
  readonly onsetBy: OnsetSource | 'mixed' | 'none';
}

/** A source or a way of entry stands for a sitting when it made this share of it (our own decision, no source). */
const standsFor = 0.9;

/** Under which conditions a sitting was sat. */
export function conditionsOf(sat: Sat): Conditions {
  const [vias, sources]: [Counts<Via>, Counts<OnsetSource>] = [new Map(), new Map()];
  for (const visit of sat.visits) {
    if (visit.end === 'left') continue;
    count(sources, visit.onsetBy);
    const own = visit.keys.length - (visit.late ?? 0);
    for (const [index, key] of visit.keys.entries()) if (index < own && isDigit(key)) count(vias, key[2]);
  }
  return {
    set: sat.set,
    length: sat.prompts.length,
    allowanceMs: sat.clock?.allowanceMs ?? null,
    sight: sat.clock?.sight ?? null,
    takesItself: sat.takesItself && sat.clock !== null,
    entry: commonest(vias),
    device: sat.device,
    onsetBy: commonest(sources),
  };
}

/** What differs between the conditions of two sittings; empty when they can be set side by side. */
export function differences(one: Conditions, other: Conditions): readonly (keyof Conditions)[] {
  return (Object.keys(one) as (keyof Conditions)[]).filter((key) => one[key] !== other[key]);
}

type Counts<T> = Map<T, number>;

function count<T>(counts: Counts<T>, value: T): void {
  counts.set(value, (counts.get(value) ?? 0) + 1);
}

function commonest<T extends string>(counts: Counts<T>): T | 'mixed' | 'none' {
  const all = [...counts].sort(([, x], [, y]) => y - x);
  const [most] = all;
  if (!most) return 'none';
  const of = all.reduce((sum, [, times]) => sum + times, 0);
  return most[1] >= standsFor * of ? most[0] : 'mixed';
}
