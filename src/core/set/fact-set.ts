import type { FactId, Operation } from '../fact/fact';
import type { Reach } from '../fact/fact-list';
import type { Id } from '../record/stamp';

/** A teaching group, the mix of an operation, or a parent's own set. Groups and own sets hold 6 to 20 facts. */
export type SetKind = 'group' | 'mix' | 'own';

/** Facts learned together. */
export interface FactSet {
  readonly id: Id;
  readonly name: string;
  /** `null` where a parent's own set mixes operations. */
  readonly op: Operation | null;
  readonly kind: SetKind;
  /** 12 where the set belongs to the option to 12s. */
  readonly reach: Reach;
  readonly facts: readonly FactId[];
  /** The set of the inverse operation that goes with it; own sets have none. */
  readonly counterpart: Id | null;
}

/** The bounds of a set (design: a set is 6 to 20 facts learned together); a mix is exempt. */
export const setSize = { least: 6, most: 20 } as const;
