import type { Fact } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';
import type { Interval } from '../statistics/interval';

/** What is known of a fact (design: quick, slow, uneven, to learn; else not enough answers yet). */
export type FactState = 'quick' | 'slow' | 'uneven' | 'toLearn' | 'notEnough';

/**
 * Why a fact has no other state: under three own answers, all on one day, no state sure enough, or right but without
 * times that could tell quick from slow.
 */
export type NotEnough = 'fewAnswers' | 'oneDay' | 'notSure' | 'noTimes';

/** A fact as the child has answered it. Sureness 0 to 1, times in ms. */
export interface FactReading {
  readonly fact: Fact;
  readonly state: FactState;
  /** `null` unless the state is `notEnough`. */
  readonly notEnough: NotEnough | null;
  /** How sure the state is, as a chance; of `notEnough` that of the likeliest other state. */
  readonly sureness: number;
  /** Whether it is surely known, be it quick, slow or not clear which. */
  readonly isKnown: boolean;
  /** Ties, and facts with a 0 or 1, are answered differently and reported apart. */
  readonly apart: 'tie' | 'zeroOrOne' | null;
  /** All own answers ever, how many of them were right, and on how many days. */
  readonly answers: number;
  readonly right: number;
  readonly days: number;
  /** The answers the state rests on, and how many of them were right; of these `accepted` by the parent's ruling. */
  readonly spoken: {
    readonly of: number;
    readonly right: number;
    readonly accepted: number;
    /** Those of them without the clock, and how many of these were right. */
    readonly ofAtEase: number;
    readonly rightAtEase: number;
  };
  /** Answers the parent called a slip, which say nothing of the fact. */
  readonly slips: number;
  readonly lastDay: Day | null;
  /** The chance of a right answer, the set's answers taken into account, with its 95 % interval. */
  readonly accuracy: { readonly share: number; readonly interval: Interval };
  /** Usual think time, drawn toward the child's own level; at most, where the hands were never measured. */
  readonly thinkMs: number | null;
  readonly thinkIsAtMost: boolean;
  /** Whether it is uneven in coming right or in its pace alone; `null` unless the state is `uneven`. */
  readonly unevenIn: 'right' | 'pace' | null;
  /** Whether the state rests on answers without the clock alone. */
  readonly withoutClock: boolean;
}

/** Fewer answers without the clock say nothing of a difference. */
export const fewestAtEase = 3;

/** Whether it is uneven by answers with the clock alone: without it every one was right. */
export function isUnevenWithClock({ state, unevenIn, withoutClock, spoken }: FactReading): boolean {
  if (state !== 'uneven' || unevenIn !== 'right' || withoutClock) return false;
  return spoken.ofAtEase >= fewestAtEase && spoken.rightAtEase === spoken.ofAtEase;
}

/** Whether no answer that counts was wrong, and they are too few for a word all the same. */
export function isRightSoFar({ notEnough, spoken }: FactReading): boolean {
  return notEnough === 'notSure' && spoken.right === spoken.of;
}
