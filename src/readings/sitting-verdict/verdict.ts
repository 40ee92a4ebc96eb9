import type { FactId } from '../../core/fact/fact';

/** What may lie behind a count: one of these, or several side by side that don't contradict each other. */
export type VerdictName = Verdict['name'];

/** Missed, or long in coming, and no better without the clock on the days before. */
export interface NotKnown {
  readonly name: 'notKnown';
  readonly facts: readonly FactId[];
  /** Earlier answers to them without the clock; quick: right in under about 3 s. */
  readonly before: { readonly of: number; readonly right: number; readonly quick: number };
}

/** Missed, or long in coming, and right at first try on fewer than three days so far. */
export interface New {
  readonly name: 'new';
  readonly facts: readonly FactId[];
  /** How many facts were missed or long in coming in all. */
  readonly troubled: number;
}

/**
 * Wrong answers quicker than right ones on this sheet or over the last ones like it, the whole sheet much quicker and
 * wronger than usual, or answers begun before the fact could be read. Times to the first key, s.
 */
export interface Rushed {
  readonly name: 'rushed';
  readonly by: 'wrongQuicker' | 'quickerThanUsual' | 'unread';
  readonly wrong: number;
  readonly of: number;
  /** Of the wrong answers, or of this sheet's. */
  readonly quickS: number;
  /** Of the right answers, or the usual time for the same facts. */
  readonly otherS: number;
  /** How likely by chance on so many `sheets` taken together; `null` where it was counted, not tested. */
  readonly p: number | null;
  readonly sheets: number;
  /** What was left of the allowance when the last card was done; `null` where the bell ended it, or without a clock. */
  readonly leftS: number | null;
  /** Wrong answers the parent called a slip, which are left out. */
  readonly slips: number;
}

/** The same facts on days with the clock and days without, as of the last look at them. */
export interface Flustered {
  readonly name: 'flustered';
  readonly by: 'slower' | 'lessRight' | 'both';
  /** Times as long with the clock; `null` where that is not beyond chance. */
  readonly ratio: number | null;
  readonly rightWith: number;
  readonly ofWith: number;
  readonly rightWithout: number;
  readonly ofWithout: number;
  /** Days with the clock, and facts, that were set side by side with days without. */
  readonly days: number;
  readonly facts: number;
}

/** Thought of quickly, but keying fills most of the allowance, and at this pace the two top bands are out of reach. */
export interface SlowHands {
  readonly name: 'slowHands';
  /** What these hands could enter by the bell if nothing had to be thought. */
  readonly mostAnswers: number;
  /** Right by the bell, for the lower of the two. */
  readonly needed: number;
  /** Of the allowance, 0 to 1. */
  readonly keyedShare: number;
  /** The allowance with every band in reach at the child's own think time. */
  readonly restoringS: number | null;
}

/** All or nearly all right and slow, though the same facts have come quickly before. */
export interface Checking {
  readonly name: 'checking';
  readonly right: number;
  readonly of: number;
  readonly thinkS: number;
  /** Earlier answers to the same facts, and how many of them were right in under about 3 s. */
  readonly quickBefore: number;
  readonly ofBefore: number;
}

/** A count that asks no question. */
export interface Fine {
  readonly name: 'fine';
}

/** The default. */
export interface CannotTell {
  readonly name: 'cannotTell';
  readonly why: 'interrupted' | 'noTimes' | 'tooFew' | 'nothingStandsOut';
}

export type Verdict = NotKnown | New | Rushed | Flustered | SlowHands | Checking | Fine | CannotTell;

/** Pairs never given of one sitting: causes that would explain the same answers in opposite ways. */
const contradictions: readonly (readonly [VerdictName, VerdictName])[] = [
  ['rushed', 'flustered'],
  ['rushed', 'checking'],
  ['checking', 'notKnown'],
  ['checking', 'new'],
  ['checking', 'flustered'],
];

/** Whether two verdicts may stand side by side; `fine` and `cannotTell` stand alone. */
export function mayStandTogether(one: VerdictName, other: VerdictName): boolean {
  if (one === other) return true;
  if ([one, other].some((name) => name === 'fine' || name === 'cannotTell')) return false;
  return !contradictions.some((pair) => pair.includes(one) && pair.includes(other));
}
