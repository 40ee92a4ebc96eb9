import type { AwayReason, Key, OnsetSource, Via } from '../record/sat';

/** What can befall a sitting; every `atMs` is ms since it began, by the event's own time stamp. */
export type SittingEvent =
  /** The card became visible; may come again with a better source. Without `showing` the card now up is meant. */
  | { readonly type: 'shown'; readonly atMs: number; readonly by: OnsetSource; readonly showing?: number }
  | { readonly type: 'key'; readonly key: Key; readonly atMs: number; readonly via: Via }
  /** A look at the clock: rings the bell, never judges an answer. */
  | { readonly type: 'time'; readonly atMs: number }
  | { readonly type: 'left'; readonly why: AwayReason; readonly atMs: number }
  | { readonly type: 'returned'; readonly atMs: number }
  /** By a grown-up. */
  | { readonly type: 'stopped'; readonly atMs: number };

/** What an event brought about, in order; `index` points into the state's visits. */
export type Happening =
  | { readonly what: 'entered' }
  | { readonly what: 'visitClosed'; readonly index: number }
  | { readonly what: 'visitAmended'; readonly index: number }
  | { readonly what: 'cardOpened' }
  | { readonly what: 'bell' }
  | { readonly what: 'ended' };
