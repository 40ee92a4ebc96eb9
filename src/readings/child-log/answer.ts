import type { Fact } from '../../core/fact/fact';
import type { Entry } from '../../core/record/sat';
import type { Day, Id } from '../../core/record/stamp';

/**
 * A fact answered or skipped by the child itself on a sheet or an extra row: the card did not show the whole fact.
 * Times in ms. Places not reached are no answers.
 */
export interface Answer {
  readonly fact: Fact;
  readonly sitting: Id;
  readonly place: number;
  readonly day: Day;
  /** The day as a count, for differences only. */
  readonly dayCount: number;
  readonly withClock: boolean;
  readonly onRow: boolean;
  readonly outcome: 'right' | 'wrong' | 'skipped';
  readonly byBell: boolean;
  readonly given: string | null;
  /** From the onset to the first digit. */
  readonly firstKeyMs: number | null;
  /** What the hands alone take to the first key; `null` where no number was ever copied in this way. */
  readonly handMs: number | null;
  readonly via: Entry;
  /** Device, way of entry and source of the onset in one word; only answers alike in it are set side by side. */
  readonly where: string;
  /** Right by the parent's ruling. */
  readonly accepted: boolean;
  /** The parent's word on a wrong answer: a slip, a miscalculation, or not said. */
  readonly slip: boolean | null;
}

/** Think time: to the first key, less what the hands alone take, never under 0; `null` without either. */
export function thinkOf({ firstKeyMs, handMs }: Answer): number | null {
  return firstKeyMs === null || handMs === null ? null : Math.max(0, firstKeyMs - handMs);
}
