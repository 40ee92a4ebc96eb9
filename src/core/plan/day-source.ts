import type { FactId } from '../fact/fact';
import type { FirstTry } from '../first-try/first-try';
import type { RuledSat } from '../household/history';
import type { SpokenCheck, Spread, Trial } from '../household/household';
import type { DayChange } from '../record/household-record';
import type { SittingPlan } from '../record/sat';
import type { ChildSettings } from '../record/settings';
import type { Day, Id } from '../record/stamp';
import type { Summary } from '../summary/summary';
import type { SheetDay } from './sheet-day';
import type { Need, Step } from './step';
import type { DrawnDay } from './trial-day';

/** What the plan reads of a child. `sittings`: in order, from some day before today on; `summary`: of all of them. */
export interface DaySource {
  readonly child: Id;
  readonly today: Day;
  readonly settings: ChildSettings;
  /** What the parent changed for today only. */
  readonly change: DayChange;
  readonly set: { readonly id: Id; readonly facts: readonly FactId[] } | null;
  readonly kept: readonly FactId[];
  /** Known by the parent's word; among `kept` too. */
  readonly ticked: ReadonlySet<FactId>;
  readonly sittings: readonly RuledSat[];
  readonly summary: Summary;
  /** The clock trial drawn last, stopped or not. */
  readonly trial: Trial | null;
  /** A spread asked for and not over. */
  readonly spread: Spread | null;
  /** Spoken checks held, by day. */
  readonly spoken: readonly SpokenCheck[];
  /** The device the day is sat on; without one, that of the last sitting. */
  readonly device?: Id;
}

/** A child's day: what is left to do, what was sat, what waits for the parent. */
export interface ChildDay {
  readonly child: Id;
  readonly today: Day;
  readonly steps: readonly Step[];
  /** Today's sheets in the order they were sat, with their rows and mending. */
  readonly sheets: readonly SheetDay[];
  readonly needs: readonly Need[];
  /** Nothing is left but to look at the piece. */
  readonly isDone: boolean;
  readonly isSkipped: boolean;
  /** No school today and nothing sat: nothing is asked. */
  readonly isFree: boolean;
  /** One more sheet for a child who wants it, without a band; on a free day the first. `null` where none can be. */
  readonly again: SittingPlan | null;
  /**
   * What today's first try says: the child's already, and what is to be taught; `isToHear` until the child went
   * on from it. `null` where none was sat.
   */
  readonly firstTry: (Pick<FirstTry, 'yours' | 'toTeach'> & { readonly isToHear: boolean }) | null;
  /** What a clock trial that goes on has for the next sheet, whatever is changed for today. */
  readonly drawn: DrawnDay | null;
}
