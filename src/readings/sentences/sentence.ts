import type { FactId } from '../../core/fact/fact';
import type { NoClaim } from '../clock-effect/claim';
import type { NotEnough } from '../facts/fact-reading';
import type { Checking, Flustered, New, NotKnown, Rushed, SlowHands } from '../sitting-verdict/verdict';
import type { Interval } from '../statistics/interval';

type Of<K extends string, Evidence = unknown> = { readonly kind: K } & Readonly<Evidence>;

/** What can be said of one sheet, each with its evidence. Times in seconds. */
export type SheetSentence =
  | Of<'byBell', { right: number; reached: number; length: number }>
  | Of<'atEase', { right: number; reached: number; length: number }>
  | Of<'notCounted', { why: 'voided' | 'notOwnWork' }>
  | Of<'rows', { right: number; of: number; thinkS: number | null }>
  | Of<'notKnown', { verdict: NotKnown }>
  | Of<'new', { verdict: New }>
  | Of<'rushedWrongQuicker', { verdict: Rushed }>
  | Of<'rushedThanUsual', { verdict: Rushed }>
  | Of<'rushedUnread', { verdict: Rushed }>
  | Of<'flusteredSlower', { verdict: Flustered }>
  | Of<'flusteredLessRight', { verdict: Flustered }>
  | Of<'flusteredBoth', { verdict: Flustered }>
  | Of<'slowHands', { verdict: SlowHands }>
  | Of<'checking', { verdict: Checking }>
  | Of<'fine', { timed: boolean }>
  | Of<'tooFew', { timed: boolean }>
  | Of<'nothingStandsOut'>
  | Of<'interrupted'>
  | Of<'noTimes'>
  | Of<'pauses', { times: number }>;

/** What can be said of facts. `sureness` is a chance, 0 to 1. */
export type FactSentence =
  | Of<'quick', { right: number; of: number; thinkS: number; atMost: boolean; sureness: number }>
  | Of<'slow', { right: number; of: number; thinkS: number; sureness: number }>
  | Of<'uneven', { right: number; of: number; sureness: number }>
  | Of<'toLearn', { right: number; of: number; sureness: number }>
  | Of<'notEnough', { answers: number; right: number; why: NotEnough }>
  | Of<
      'setFacts',
      { facts: number; quick: number; slow: number; uneven: number; toLearn: number; tooFew: number }
    >
  /** `what` are the words for a kind of wrong answer. */
  | Of<'errorLift', { what: string; hits: number; of: number; expected: number; pMore: number }>;

/** What is followed over time. */
export type TrendOf = 'facts' | 'digits' | 'count' | 'think';

/** What can be said over time. */
export type OverTimeSentence =
  | Of<'ready', { quick: number; facts: number; lastRight: number; lastOf: number }>
  | Of<'notReady', { quick: number; facts: number; heldBack: readonly FactId[]; isAccurate: boolean }>
  | Of<'timeIt', { lastRight: number; lastOf: number }>
  | Of<'timedTooSoon', { lastRight: number; lastOf: number }>
  | Of<
      'clockTimes',
      { claim: 'slower' | 'faster'; ratio: number; interval: Interval | null; facts: number; days: number }
    >
  | Of<
      'clockAccuracy',
      { claim: 'worse' | 'better'; worse: number; better: number; facts: number; isSooner: boolean }
    >
  | Of<
      'clockNoClaim',
      { time: NoClaim; accuracy: NoClaim; facts: number; daysWith: number; daysWithout: number }
    >
  | Of<'trialDone', { ratio: number; p: number; days: number; facts: number; orders: number }>
  | Of<'trialOpen', { days: number; left: number; isStopped: boolean }>
  | Of<'trend', { of: TrendOf; withClock: boolean; perWeek: number; interval: Interval; sittings: number }>
  | Of<'noTrend', { of: TrendOf; withClock: boolean; why: 'tooFew' | 'ceiling' }>
  | Of<'keypad', { mostAnswers: number; allowanceS: number; bands: number; restoringS: number | null }>
  | Of<'noHandTime'>;

/** Every kind of sentence there is. */
export type Sentence = SheetSentence | FactSentence | OverTimeSentence;

/** A sentence in words, and in two lines what it rests on and what it can't tell. */
export interface Said {
  readonly text: string;
  readonly how: readonly [string, string];
}
