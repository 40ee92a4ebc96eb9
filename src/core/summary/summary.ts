import type { FactId } from '../fact/fact';
import type { Via } from '../record/sat';
import type { Day, Id } from '../record/stamp';

/** What counts reach back for one fact. */
export interface FactSummary {
  /** Days on which the day's first answer was right, and no card had shown the fact before it. */
  readonly rightDays: number;
  /** The first of these days, and the newest, oldest first; at most 4. */
  readonly firstRight: Day | null;
  readonly lastRight: readonly Day[];
  /** Answers and skips on sheets, rows and first tries, and the first of a day on cards. */
  readonly seen: number;
  readonly lastSeen: Day;
  /** The newest answers, oldest first, `1` right and `0` wrong or skipped; at most 8. */
  readonly recent: string;
}

/** One answer given without the clock. */
export type UntimedAnswer = readonly [fact: FactId, right: boolean];

/** A day's card rounds: of the facts new in them, how many were right and how many not when first asked on a later day. */
export interface RoundSummary {
  readonly day: Day;
  /** Not asked on a later day so far. */
  readonly waiting: readonly FactId[];
  readonly taken: number;
  readonly missed: readonly FactId[];
}

/** Where the child stands between look-back sheets. */
export interface LookBacks {
  /** Finished: not voided, no more than one a day. */
  readonly finished: number;
  /** Other sheets finished since the last one. */
  readonly since: number;
}

/** The hands that sat lately: one way of entry on one device. */
export interface Hands {
  readonly device: Id;
  readonly via: Via;
  /** Copy rounds of these hands finished, and the day of the last one. */
  readonly copied: number;
  readonly copiedOn: Day | null;
}

/** What the plan needs of a child's whole history; derived, disposable, and what a checkpoint holds. */
export interface Summary {
  /** Sheets finished in any way of sitting: not voided, no more than one a day, no look-backs. */
  readonly finished: number;
  readonly lookBacks: LookBacks;
  /** The days of the newest finished sheets, look-backs among them, oldest first; at most 40. */
  readonly finishedDays: readonly Day[];
  /** The last day with a sheet, finished or not; voided ones apart. */
  readonly lastSheet: Day | null;
  /** Ways of taking an answer practised to the end: by the done key, by its digits. */
  readonly practised: { readonly done: boolean; readonly itself: boolean };
  /** The hands met, those that sat last at the end; at most 6. */
  readonly hands: readonly Hands[];
  /** What a card took on average in the newest sittings without the clock, ms, oldest first; at most 5. */
  readonly cardMs: readonly number[];
  readonly facts: ReadonlyMap<FactId, FactSummary>;
  /** The newest answers without the clock, oldest first; at most 250. */
  readonly untimed: readonly UntimedAnswer[];
  /** The card rounds of the newest days, oldest first; at most 5 days. */
  readonly rounds: readonly RoundSummary[];
  /** Facts that a card showed whole on the last day with a card round: right later that day is no first try. */
  readonly shownOn: { readonly day: Day; readonly facts: readonly FactId[] } | null;
  /** Of the clock trial met last, which of its days have been sat; `null` before any. */
  readonly trial: { readonly trial: Id; readonly days: readonly number[] } | null;
  /** Of the spread met last, which of its halves have been sat to their end; `null` before any. */
  readonly spread: { readonly spread: Id; readonly parts: readonly number[] } | null;
}

/** Changes whenever the meaning of a summary does, so that no checkpoint outlives its rules. */
export const summaryVersion = 8;

/** A child who has not sat anything. */
export const emptySummary: Summary = {
  finished: 0,
  lookBacks: { finished: 0, since: 0 },
  finishedDays: [],
  lastSheet: null,
  practised: { done: false, itself: false },
  hands: [],
  cardMs: [],
  facts: new Map(),
  untimed: [],
  rounds: [],
  shownOn: null,
  trial: null,
  spread: null,
};
