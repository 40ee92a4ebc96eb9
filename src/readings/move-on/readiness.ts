import type { FactId } from '../../core/fact/fact';
import type { Day, Id } from '../../core/record/stamp';
import type { FactState } from '../facts/fact-reading';

/** A fact that holds its set back. `isNew`: not yet right at first try on three days. */
export interface HeldBack {
  readonly fact: FactId;
  readonly state: Exclude<FactState, 'quick'>;
  readonly isNew: boolean;
}

/**
 * Whether to move on from the current set. A proposal: the parent decides. `quick` counts the facts surely so.
 * `timeIt`: the set is accurate and has not been timed; `notYet`: the clock is on though the set is not accurate.
 */
export interface Readiness {
  readonly set: Id;
  readonly facts: number;
  readonly quick: number;
  /** Of the last 50 answers without the clock. */
  readonly lastRight: number;
  readonly lastOf: number;
  /** The days of the first and the last of them; `null` without any. */
  readonly lastDays: readonly [from: Day, to: Day] | null;
  readonly isAccurate: boolean;
  /** Facts called uneven with answers with the clock among theirs, which do not hold the set back. */
  readonly unevenWithClock: number;
  readonly isReady: boolean;
  /** Weakest first. */
  readonly heldBack: readonly HeldBack[];
  readonly clock: 'timeIt' | 'notYet' | 'fine';
}
