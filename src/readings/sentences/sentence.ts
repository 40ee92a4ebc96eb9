import type { FactId } from '../../core/fact/fact';
import type { NoClaim } from '../clock-effect/claim';
import type { NotEnough } from '../facts/fact-reading';
import type { Verdict } from '../sitting-verdict/verdict';
import type { Interval } from '../statistics/interval';

type Of<K extends string, Body = unknown> = { readonly kind: K } & Body;

/** Everything that can be said of one sheet. Times in seconds, counts of facts. */
export type SittingSentence =
  | Of<'byBell', { right: number; reached: number; length: number }>
  | Of<'atEase', { right: number; of: number }>
  | Of<'notCounted', { why: 'voided' | 'notOwnWork' }>
  | Of<'rows', { right: number; of: number; thinkS: number | null }>
  | Of<'notKnown', { verdict: Extract<Verdict, { name: 'notKnown' }> }>
  | Of<'new', { verdict: Extract<Verdict, { name: 'new' }> }>
  | Of<'rushedWrongQuicker', { verdict: Extract<Verdict, { name: 'rushed' }> }>
  | Of<'rushedThanUsual', { verdict: Extract<Verdict, { name: 'rushed' }> }>
  | Of<'flusteredSlower', { verdict: Extract<Verdict, { name: 'flustered' }> }>
  | Of<'flusteredLessRight', { verdict: Extract<Verdict, { name: 'flustered' }> }>
  | Of<'slowHands', { verdict: Extract<Verdict, { name: 'slowHands' }> }>
  | Of<'checking', { verdict: Extract<Verdict, { name: 'checking' }> }>
  | Of<'fine'>
  | Of<'tooFew', { timed: boolean }>
  | Of<'nothingStandsOut'>
  | Of<'interrupted'>
  | Of<'noTimes'>
  | Of<'perseverated', { times: number }>
  | Of<'slips', { times: number }>
  | Of<'pauses', { times: number }>;

/** Everything that can be said of facts. */
export type FactSentence =
  | Of<'quick', { right: number; of: number; thinkS: number; atMost: boolean; sureness: number }>
  | Of<'slow', { right: number; of: number; thinkS: number; sureness: number }>
  | Of<'uneven', { right: number; of: number; sureness: number }>
  | Of<'toLearn', { right: number; of: number; sureness: number }>
  | Of<'notEnough', { answers: number; right: number; why: NotEnough }>
  | Of<'setFacts', { facts: number; quick: number; slow: number; uneven: number; toLearn: number }>
  | Of<'errorLift', { what: string; hits: number; of: number; expected: number; pMore: number }>;

/** Everything that can be said over time. */
export type OverTimeSentence =
  | Of<'ready', { quick: number; facts: number; lastRight: number; lastOf: number }>
  | Of<'notReady', { quick: number; facts: number; heldBack: readonly FactId[] }>
  | Of<'timeIt', { lastRight: number; lastOf: number }>
  | Of<'timedTooSoon', { lastRight: number; lastOf: number }>
  | Of<
      'clockTimes',
      { claim: 'slower' | 'faster'; ratio: number; interval: Interval | null; facts: number; days: number }
    >
  | Of<'clockAccuracy', { claim: 'worse' | 'better'; worse: number; better: number; days: number }>
  | Of<
      'clockNoClaim',
      { time: NoClaim; accuracy: NoClaim; facts: number; daysWith: number; daysWithout: number }
    >
  | Of<'trialDone', { ratio: number; p: number; days: number; facts: number }>
  | Of<'trialOpen', { days: number; left: number }>
  | Of<'trend', { of: 'facts' | 'digits' | 'think'; perWeek: number; interval: Interval; sittings: number }>
  | Of<'noTrend', { of: 'facts' | 'digits' | 'think'; why: 'tooFew' | 'ceiling' }>
  | Of<'keypad', { mostAnswers: number; allowanceS: number; restoringS: number | null }>
  | Of<'noHandTime'>;

/** A kind of sentence with its evidence. */
export type Sentence = SittingSentence | FactSentence | OverTimeSentence;
export type SentenceKind = Sentence['kind'];
