import type { Id } from '../record/stamp';

/** What the parent's rulings in force say of one sitting. Places count from 0. */
export interface SatRulings {
  readonly voided: boolean;
  readonly notOwnWork: boolean;
  readonly bandAnyway: boolean;
  /** The child it belongs to by ruling; `null` when it stays with the child who sat it. */
  readonly child: Id | null;
  /** Extra rows it brings, whatever was proposed; `null` without a ruling. */
  readonly rows: number | null;
  readonly accepted: ReadonlySet<number>;
  /** Wrong answers the parent has judged: true for a slip, false for a miscalculation. */
  readonly slips: ReadonlyMap<number, boolean>;
}

/** A sitting nobody has ruled on. */
export const noRulings: SatRulings = {
  voided: false,
  notOwnWork: false,
  bandAnyway: false,
  child: null,
  rows: null,
  accepted: new Set(),
  slips: new Map(),
};
