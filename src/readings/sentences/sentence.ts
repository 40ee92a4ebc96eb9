import type { FactId } from '../../core/fact/fact';
import type { Band } from '../../core/marking/band';
import type { NoClaim } from '../clock-effect/claim';
import type { TimeEffect } from '../clock-effect/time-effect';
import type { FactReading, NotEnough } from '../facts/fact-reading';
import type { Readiness } from '../move-on/readiness';
import type { Checking, Flustered, New, NotKnown, Rushed, SlowHands } from '../sitting-verdict/verdict';
import type { Interval } from '../statistics/interval';

type Of<K extends string, Evidence = unknown> = { readonly kind: K } & Readonly<Evidence>;

/** A sheet's count; of the right ones `accepted` by the parent's ruling, of the wrong ones so many called slips. */
interface Count {
  readonly right: number;
  readonly reached: number;
  readonly length: number;
  readonly accepted: number;
  readonly slips: number;
}

/** What can be said of one sheet, each with its evidence. Times in seconds. */
export type SheetSentence =
  | Of<'byBell', Count>
  | Of<'atEase', Count>
  | Of<'notCounted', { why: 'voided' | 'notOwnWork' }>
  | Of<'rows', { right: number; of: number; thinkS: number | null }>
  | Of<'notKnown', { verdict: NotKnown }>
  | Of<'new', { verdict: New }>
  /** `advises`: a trial does not decide about the clock already; `untimed`: answers without a time that can be used. */
  | Of<'rushedWrongQuicker', { verdict: Rushed; advises: boolean; untimed: number; bellFirst: boolean }>
  | Of<'rushedThanUsual', { verdict: Rushed }>
  | Of<'rushedUnread', { verdict: Rushed }>
  | Of<'flusteredSlower', { verdict: Flustered }>
  | Of<'flusteredLessRight', { verdict: Flustered }>
  | Of<'flusteredBoth', { verdict: Flustered }>
  | Of<'slowHands', { verdict: SlowHands; advises: boolean }>
  | Of<'checking', { verdict: Checking }>
  | Of<'fine', { timed: boolean; band: Band | null; slips: number }>
  | Of<'tooFew', { timed: boolean; wrong: number }>
  | Of<'nothingStandsOut'>
  /** `whole`: every fact was reached all the same. */
  | Of<'interrupted', { whole: boolean }>
  | Of<'noTimes'>
  | Of<'pauses', { times: number; of: number }>;

/** What the word on a fact rests on: of `all` answers ever the `of` that decided, how the parent ruled on some. */
export interface Counted {
  readonly right: number;
  readonly of: number;
  readonly all: number;
  readonly withoutClock: boolean;
  readonly accepted: number;
  readonly slips: number;
  /** Of those that decided the ones without the clock. */
  readonly ofAtEase: number;
  readonly rightAtEase: number;
}

/** What can be said of facts. `sureness` is a chance, 0 to 1. */
export type FactSentence =
  | Of<'quick', { counted: Counted; thinkS: number; atMost: boolean; sureness: number }>
  | Of<'slow', { counted: Counted; thinkS: number; sureness: number }>
  | Of<'uneven', { counted: Counted; unevenIn: FactReading['unevenIn']; sureness: number }>
  | Of<'toLearn', { counted: Counted; sureness: number }>
  | Of<'notEnough', { counted: Counted; why: NotEnough; isKnown: boolean }>
  /** Facts by their states: all there are, or those not counted apart. `hurried`: the last sheet with the clock was rushed. */
  | Of<
      'setFacts',
      Readonly<Record<'facts' | 'quick' | 'slow' | 'uneven' | 'toLearn', number>> &
        Readonly<Record<'soFar' | 'fewAnswers' | 'oneDay' | 'unevenWithClock', number>> & {
          scope: 'all' | 'plain';
          hurried: boolean;
        }
    >
  /** `what` are the words for a kind of wrong answer. */
  | Of<'errorLift', { what: string; hits: number; of: number; expected: number; pMore: number }>;

/** What is followed over time. */
export type TrendOf = 'facts' | 'digits' | 'count' | 'think';

/** What can be said over time. */
export type OverTimeSentence =
  /** The next set begins without the clock: now it is off, on, on and days with it less often right or slower, or drawn by a trial. */
  | Of<
      'ready',
      {
        quick: number;
        facts: number;
        lastRight: number;
        lastOf: number;
        lastDays: Readiness['lastDays'];
        unevenWithClock: number;
        clock: 'off' | 'on' | 'lessRight' | 'slower' | 'drawn';
      }
    >
  | Of<'notReady', { quick: number; facts: number; heldBack: readonly FactId[]; isAccurate: boolean }>
  | Of<'timeIt', { lastRight: number; lastOf: number }>
  | Of<'timedTooSoon', { lastRight: number; lastOf: number }>
  | Of<
      'clockTimes',
      {
        claim: 'slower' | 'faster';
        ratio: number;
        interval: Interval | null;
        facts: number;
        days: number;
        rights: 'worse' | 'better' | null;
      }
    >
  | Of<
      'clockAccuracy',
      { claim: 'worse' | 'better'; worse: number; better: number; facts: number; time: TimeEffect['claim'] }
    >
  | Of<
      'clockNoClaim',
      { time: NoClaim; accuracy: NoClaim; facts: number; daysWith: number; daysWithout: number }
    >
  | Of<'trialDone', { ratio: number; p: number; days: number; facts: number; orders: number }>
  | Of<'trialOpen', { days: number; left: number; isStopped: boolean }>
  | Of<
      'trend',
      {
        of: TrendOf;
        withClock: boolean;
        perWeek: number;
        interval: Interval;
        sheets: number;
        isFirst: boolean;
      }
    >
  /** Of the newest stretch of sheets; `isFirst` where nothing ever changed. */
  | Of<
      'noTrend',
      { of: TrendOf; withClock: boolean; why: 'tooFew' | 'ceiling'; sheets: number; isFirst: boolean }
    >
  | Of<'keypad', { mostAnswers: number; allowanceS: number; bands: number; restoringS: number | null }>
  | Of<'noHandTime'>;

/** Every kind of sentence there is. */
export type Sentence = SheetSentence | FactSentence | OverTimeSentence;

/** A sentence in words, and in two lines what it rests on and what it can't tell. */
export interface Said {
  readonly text: string;
  readonly how: readonly [string, string];
}
