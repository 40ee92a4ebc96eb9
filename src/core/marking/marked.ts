import type { PromptId } from '../fact/prompt';
import type { ChildSettings } from '../record/settings';
import type { Band } from './band';

/** How a place came out. `unfinished`: its card was on screen, no answer was given. */
export type Outcome = 'right' | 'wrong' | 'skipped' | 'notReached' | 'unfinished';

/** Why a sitting has no band. */
export type NoBand = 'voided' | 'notOwnWork' | 'untimed' | 'second' | 'interrupted';

/** One place of a sitting, marked by the last visit that decided it. Times in ms, `null` where none is known. */
export interface MarkedPlace {
  readonly place: number;
  readonly prompt: PromptId;
  readonly answer: number;
  readonly given: string | null;
  readonly outcome: Outcome;
  /** Taken by the bell; false in an untimed sitting. */
  readonly byBell: boolean;
  /** From the onset to the first digit; `null` too where the card was opened again. */
  readonly firstKeyMs: number | null;
  /** From the onset to the answer. */
  readonly tookMs: number | null;
  /** From the sitting's first onset to the answer, time away and void visits left out. */
  readonly atMs: number | null;
  /** The whole fact was on the card. */
  readonly shown: boolean;
  /** Accepted by the parent. */
  readonly accepted: boolean;
  /** The parent's word: a slip, a miscalculation, or not said. */
  readonly slip: boolean | null;
}

/** Signs to read, not interruptions; `null` where times were not kept. */
export interface Flags {
  readonly longSilence: boolean;
  readonly mashing: boolean;
}

/** A sitting, marked. */
export interface Marked {
  readonly places: readonly MarkedPlace[];
  readonly right: number;
  readonly wrong: number;
  readonly skipped: number;
  readonly notReached: number;
  readonly unfinished: number;
  /** Places whose card was on screen. */
  readonly reached: number;
  /** 0 in an untimed sitting, which has no bell. */
  readonly rightByBell: number;
  readonly band: Band | null;
  /** `null` where there is a band. */
  readonly noBand: NoBand | null;
  /** Interrupted, stopped or torn off. */
  readonly interrupted: boolean;
  readonly flags: Flags | null;
  /** Right answers and digits correct, a minute: by the bell in a timed sitting, else over its whole length. */
  readonly factsPerMin: number | null;
  readonly digitsPerMin: number | null;
  /** Median time from onset to answer. */
  readonly medianMs: number | null;
  /** The limits it was marked by, of 25. */
  readonly limits: ChildSettings['limits'];
}
