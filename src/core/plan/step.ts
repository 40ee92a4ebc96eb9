import type { SittingPlan } from '../record/sat';
import type { Id } from '../record/stamp';

/** One thing for the child to do next; the ones with a `plan` are sat card by card. */
export type Step =
  | { readonly what: 'told' }
  | { readonly what: 'practice'; readonly plan: SittingPlan }
  | { readonly what: 'sheet'; readonly plan: SittingPlan }
  | { readonly what: 'row'; readonly plan: SittingPlan }
  /** `gave` is what the child had answered to each prompt; `null` where it was skipped. */
  | { readonly what: 'mending'; readonly plan: SittingPlan; readonly gave: readonly (string | null)[] }
  /** The day is done: the piece whole, then the long cloth. */
  | { readonly what: 'piece' };

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
  /** The set is accurate: the clock may be proposed. */
  | { readonly what: 'proposeClock' };
