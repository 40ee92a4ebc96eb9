import type { FactId } from '../fact/fact';
import type { SpokenFact } from '../look-back/spoken-check';
import type { SittingPlan } from '../record/sat';
import type { Id } from '../record/stamp';

/** One thing for the child to do next; the ones with a `plan` are sat card by card. */
export type Step =
  | { readonly what: 'told' }
  /** Numbers to copy: the way answers are taken, or the hand time. */
  | { readonly what: 'practice'; readonly plan: SittingPlan }
  /** All of a new set without the clock, before any teaching. */
  | { readonly what: 'firstTry'; readonly plan: SittingPlan }
  /**
   * A card round; `fresh` are its new facts, whose first card shows the whole fact (`plan.shownFirst`). Where
   * `isChoice` the child may go straight to the sheet, which is then the next step of the day.
   */
  | {
      readonly what: 'cards';
      readonly plan: SittingPlan;
      readonly isChoice: boolean;
      readonly fresh: readonly FactId[];
      /** What the child has: the strategy of a new fact may rest on it. */
      readonly had: readonly FactId[];
    }
  /** A look-back where `plan.lookBack`: no clock, no help. */
  | { readonly what: 'sheet'; readonly plan: SittingPlan }
  | { readonly what: 'row'; readonly plan: SittingPlan }
  /** `gave` is what the child had answered to each prompt; `null` where it was skipped. */
  | { readonly what: 'mending'; readonly plan: SittingPlan; readonly gave: readonly (string | null)[] }
  /** Twins of what was miscalculated, `plan.twinOf`, one for each prompt. */
  | { readonly what: 'twin'; readonly plan: SittingPlan }
  /** Gap lines and stories. */
  | { readonly what: 'lines'; readonly plan: SittingPlan }
  /** The day is done: the piece whole, then the long cloth. */
  | { readonly what: 'piece' };

/** What the day's minutes left undone: how many facts, rows or twins of it. */
export interface Waiting {
  readonly step: 'sheet' | 'row' | 'mending' | 'twin' | 'lines';
  readonly count: number;
}

/** What waits for the parent; the child's day never does. */
export type Need =
  | { readonly what: 'noSet' }
  /** Both days of a spread were sat: it proposes kept sets and a current one. */
  | { readonly what: 'spreadSat' }
  /** Rows the rule proposes, to be sent on the parent's word. */
  | { readonly what: 'rowsWaiting'; readonly sitting: Id; readonly rows: number }
  /** Rows were sent as far as the rule goes and the facts still do not come. */
  | { readonly what: 'rowsStopped'; readonly sitting: Id }
  /** A timed sheet that was interrupted has no band unless the parent rules so. */
  | { readonly what: 'interrupted'; readonly sitting: Id }
  /** Facts to ask aloud, each with why; one check at most waits, however long. */
  | { readonly what: 'spokenCheck'; readonly facts: readonly SpokenFact[] }
  /** The minutes were used up: what waits. Mending and twins begin the next day, rows do not come again. */
  | { readonly what: 'waited'; readonly waits: readonly Waiting[] }
  /** The set is accurate: the clock may be proposed. */
  | { readonly what: 'proposeClock' };
