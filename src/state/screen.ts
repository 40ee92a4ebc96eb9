import type { FactId } from '../core/fact/fact';
import type { Child } from '../core/household/household';
import type { ChildDay } from '../core/plan/plan-day';
import type { SheetDay } from '../core/plan/sheet-day';
import type { Step } from '../core/plan/step';
import type { Id } from '../core/record/stamp';
import type { SittingRun } from './sitting-run';

/** What the device shows: a function of the log, of whose turn it is, and of what was opened over it. */
export type Screen =
  | { readonly on: 'starting' }
  | { readonly on: 'welcome' }
  | { readonly on: 'whose'; readonly children: readonly Turn[] }
  | { readonly on: 'next'; readonly child: Child; readonly step: Step; readonly day: ChildDay }
  /** After a first try: what the child has already. */
  | { readonly on: 'yours'; readonly child: Child; readonly facts: readonly FactId[] }
  | { readonly on: 'sitting'; readonly child: Child; readonly run: SittingRun }
  | { readonly on: 'away'; readonly child: Child }
  /** The moment after a sheet, and once more when the day is done. */
  | { readonly on: 'piece'; readonly child: Child; readonly sheet: SheetDay; readonly day: ChildDay }
  /** Nothing to sit before a grown-up has chosen a set. */
  | { readonly on: 'ask'; readonly child: Child }
  /** Nothing left today: done, skipped, or no school. */
  | { readonly on: 'rest'; readonly child: Child; readonly day: ChildDay; readonly following: Child | null }
  | { readonly on: 'handOver'; readonly to: Child }
  | { readonly on: 'cloth'; readonly child: Child }
  /** Another window has the seat; `mayTake` once it had time to give way. */
  | { readonly on: 'elsewhere'; readonly mayTake: boolean }
  | { readonly on: 'grownUps' };

/** A child at *Whose cloth?*. */
export interface Turn {
  readonly child: Child;
  readonly isDone: boolean;
}

/** The child after this one whose day is not done; `null` when all are. */
export function followingTurn(turns: readonly Turn[], child: Id): Child | null {
  const place = turns.findIndex((turn) => turn.child.id === child);
  const after = [...turns.slice(place + 1), ...turns.slice(0, Math.max(0, place))];
  return after.find(({ isDone }) => !isDone)?.child ?? null;
}
