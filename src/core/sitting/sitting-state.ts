import type { Away, KeyPress, OnsetSource, SittingEnd, SittingPlan, Visit } from '../record/sat';
import type { Happening } from './sitting-event';
import { isShownFirst } from './turn';

/** A sitting at one moment. Times in ms since it began. */
export interface SittingState {
  readonly plan: SittingPlan;
  readonly phase: 'showing' | 'answering' | 'away' | 'ended';
  /** Position in the order of cards: every prompt, then the skipped ones once more. */
  readonly turn: number;
  /** Places skipped that come back at the end, in the order of skipping. */
  readonly again: readonly number[];
  /** Index of the card's prompt. */
  readonly place: number;
  /** Serial of this showing of a card: the key of its element. */
  readonly showing: number;
  /** The showing that the last visit was. */
  readonly closed: number | null;
  readonly entry: string;
  /** Digits that stood on the card when it was opened again; `null` on a fresh card. */
  readonly from: string | null;
  /** The card shows the whole fact. */
  readonly shown: boolean;
  /** Keys entered on the card so far. */
  readonly keys: readonly KeyPress[];
  readonly onsetMs: number | null;
  readonly onsetBy: OnsetSource;
  /** The closed visits and the spans away; as they will be recorded, but with their times always. */
  readonly visits: readonly Visit[];
  readonly away: readonly Away[];
  readonly firstOnsetMs: number | null;
  /** When the bell rings; after an interruption reckoned in active time, and never rung. */
  readonly bellAtMs: number | null;
  /** Allowance left at the onset of the card now up, where that onset sets the bell. */
  readonly leftMs: number | null;
  readonly rang: boolean;
  /** Interrupted while timed: goes on without a clock. */
  readonly clockGone: boolean;
  readonly ended: SittingEnd | null;
  readonly endedMs: number | null;
}

/** The state after an event, and what happened. */
export interface Stepped {
  readonly state: SittingState;
  readonly happened: readonly Happening[];
}

/** A sitting before its first card is visible; one without prompts has ended already. */
export function beginSitting(plan: SittingPlan): SittingState {
  const isEmpty = plan.prompts.length === 0;
  return {
    plan,
    phase: isEmpty ? 'ended' : 'showing',
    turn: 0,
    again: [],
    place: 0,
    showing: 1,
    closed: null,
    entry: '',
    from: null,
    shown: isShownFirst(plan, 0),
    keys: [],
    onsetMs: null,
    onsetBy: 'frame',
    visits: [],
    away: [],
    firstOnsetMs: null,
    bellAtMs: null,
    leftMs: plan.clock ? plan.clock.allowanceMs : null,
    rang: false,
    clockGone: false,
    ended: isEmpty ? 'finished' : null,
    endedMs: isEmpty ? 0 : null,
  };
}
