import type { FactId } from '../core/fact/fact';
import type { ChildSettings } from '../core/record/settings';
import type { Id } from '../core/record/stamp';
import type { Traits } from './made-child';
import type { Mishap } from './sit';

/** A set the parent makes herself. */
export interface MadeSet {
  readonly id: Id;
  readonly name: string;
  readonly facts: readonly FactId[];
}

/** What comes between, once, on the first sheet of its kind from a school day on; a void one is sat again. */
export interface PlannedMishap {
  readonly fromDay: number;
  readonly on: 'timed' | 'untimed';
  readonly mishap: Mishap;
  readonly isVoid: boolean;
}

/** A child of the boat: what it is like, and how the parent goes about it. Days count school days from 0. */
export interface CrewMember {
  readonly id: Id;
  readonly name: string;
  readonly edge: number;
  readonly traits: Traits;
  /** When the child sits down, by the boat's clock. */
  readonly sitsAt: readonly [hours: number, minutes: number];
  readonly settings: Partial<ChildSettings>;
  /** Known already, by the parent's word on the first day. */
  readonly ticked: readonly FactId[];
  readonly ownSets: readonly MadeSet[];
  /** Sets in the order in which they are learned, and the fewest days on each. */
  readonly sets: readonly Id[];
  readonly leastDays: number;
  /** Never; from when the set is accurate; or then too, but taken away again on every other day, drawn in pairs. */
  readonly clock: 'never' | 'onceAccurate' | 'everyOtherDay';
  /** Whether the child takes the cards where it may go straight to the sheet. */
  readonly choosesCards: boolean;
  /** Ill, or away. */
  readonly misses: readonly number[];
  readonly mishaps: readonly PlannedMishap[];
}
