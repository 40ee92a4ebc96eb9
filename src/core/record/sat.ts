import type { FactId } from '../fact/fact';
import type { PromptId } from '../fact/prompt';
import type { Sight } from './settings';
import type { Day, Id, Stamp } from './stamp';

/**
 * Which step of the day a sitting was. `row` is one extra row, `mending` puts misses right, `cards` is a card round,
 * `firstTry` a pass over a new set before any teaching, `lines` gap lines and stories.
 */
export type Purpose = 'sheet' | 'row' | 'mending' | 'practice' | 'cards' | 'firstTry' | 'lines';

/** How a key reached the card. */
export type Via = 'touch' | 'keys';

/** How answers came: by a key of either kind, or written on paper. */
export type Entry = Via | 'paper';

/** A digit, or what the other keys mean. */
export type Key = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | 'back' | 'done' | 'skip';

/** One key: which, when it fell (ms since the sitting began; `null` when times are not kept), and how. */
export type KeyPress = readonly [key: Key, atMs: number | null, via: Via];

/**
 * Where a card's onset was taken from: Element Timing in a cross-origin isolated page, the same in steps of
 * 4 ms less half a step, or the clock read in the frame callback after the commit. Never mixed in one trend.
 */
export type OnsetSource = 'element' | 'elementCoarse' | 'frame';

/** Why a card left the screen. `back`: the card before was opened again; `left`: interrupted, the visit is void. */
export type VisitEnd = 'taken' | 'skipped' | 'back' | 'left';

/** One showing of one card. Times in ms since the sitting began, `null` when times are not kept. */
export interface Visit {
  /** Index into the sitting's prompts. */
  readonly place: number;
  readonly onsetMs: number | null;
  /** `paper`: no card was shown. */
  readonly onsetBy: OnsetSource | 'paper';
  /** Digits standing on the card when it was opened again; absent on a fresh card. */
  readonly from?: string;
  /** The card also showed the whole fact. */
  readonly shown?: true;
  /** In the order they fell, with those that fell within 250 ms of the next card behind `end`. */
  readonly keys: readonly KeyPress[];
  /** Late keys: how many of `keys`, from the end, fell after this card had gone and were entered nowhere. */
  readonly late?: number;
  readonly end: VisitEnd;
  readonly endMs: number | null;
  /** The digits given; `null` unless `end` is `taken`, and on paper where a wrong answer was not typed in. */
  readonly given: string | null;
  /** Whether the answer was taken by its digits or by the done key. */
  readonly took: 'itself' | 'done' | null;
  /** Taken after the bell: kept, not counted. */
  readonly afterBell?: true;
}

/** Why a sitting was interrupted. `clocks`: the monotonic and the wall clock disagreed by over a second. */
export type AwayReason = 'hidden' | 'asleep' | 'stopped' | 'torn' | 'clocks';

/** A span away from the sitting, ms since it began. */
export interface Away {
  readonly why: AwayReason;
  readonly fromMs: number | null;
  readonly toMs: number | null;
  /** How many visits stood before it. */
  readonly afterVisits: number;
}

/** The allowance and the sight of the clock; an untimed sitting has none. */
export interface Clock {
  readonly allowanceMs: number;
  readonly sight: Sight;
}

/** The day of a clock trial a sheet was sat for: `day` counts from 0 in the order drawn. */
export interface TrialDay {
  readonly trial: Id;
  readonly day: number;
}

/** The half of a spread a sheet asked; `spread` is the id of the record that asked for it. */
export interface SpreadHalf {
  readonly spread: Id;
  readonly part: 0 | 1;
}

/** Everything fixed before the first card. */
export interface SittingPlan {
  readonly child: Id;
  readonly purpose: Purpose;
  /** The sheet a row or a mending belongs to. */
  readonly of: Id | null;
  /** The set the sheet was made from; `null` where it is none: practice, a spread. */
  readonly set: Id | null;
  readonly seed: number;
  readonly prompts: readonly PromptId[];
  readonly clock: Clock | null;
  /** Whether an answer is taken once it has as many digits as the true one. */
  readonly takesItself: boolean;
  /** After a wrong answer: go on, or show the whole fact and ask again until it is right. */
  readonly onWrong: 'goOn' | 'showAgain';
  readonly keepTimes: boolean;
  /** Places whose card shows the whole fact when it first comes: the new facts of a card round. */
  readonly shownFirst?: readonly number[];
  /** A mending of twins: the miscalculated fact that each prompt is the twin of. */
  readonly twinOf?: readonly FactId[];
  /** Enough for today: after so many ms of active time the card on the screen is the last; never on a timed sheet. */
  readonly enoughMs?: number;
  /** A look-back sheet: without the clock, no help, counted apart. */
  readonly lookBack?: true;
  /** A second sheet on a day: kept, labelled, without a band. */
  readonly second?: true;
  /** Done on paper and entered by a parent: no card was shown and no time is known. */
  readonly paper?: true;
  /** Sat as a day of a clock trial, as it was drawn. */
  readonly trial?: TrialDay;
  /** Sat as one half of a spread. */
  readonly spread?: SpreadHalf;
}

/** When and on what a sitting began. `day` never changes, wherever the device travels. */
export interface SittingStart {
  readonly day: Day;
  readonly offsetMin: number;
  readonly zone: string;
  /** Wall clock, ms since 1970; the start of the day when times are not kept. */
  readonly startedAt: number;
  /** The monotonic clock's step, ms, and whether the page was cross-origin isolated. */
  readonly clockStepMs: number;
  readonly isolated: boolean;
}

/** How a sitting ended: every card done, the bell, the day's minutes, a grown-up, or broken off and closed later. */
export type SittingEnd = 'finished' | 'bell' | 'enough' | 'stopped' | 'torn';

/** One child's pass at one list of prompts. Replaying the visits gives the sitting to the millisecond. */
export type Sat = Stamp &
  SittingPlan &
  SittingStart & {
    readonly kind: 'sat';
    readonly visits: readonly Visit[];
    readonly away: readonly Away[];
    readonly ended: SittingEnd;
    readonly endedMs: number | null;
  };
