import type { SatRulings } from '../marking/sat-rulings';
import type { DayChange, SheetPrinted } from '../record/household-record';
import type { HistoryRecord } from '../record/record';
import type { Sat } from '../record/sat';
import { compareStamps, type Day, type Id } from '../record/stamp';
import type { Household } from './household';
import { inOrder } from './order';

/** A sitting with the rulings in force on it. `child` is the one it belongs to; `sat.child` the one it was stored for. */
export interface RuledSat {
  readonly sat: Sat;
  readonly child: Id;
  readonly rulings: SatRulings;
}

/** One child's days. */
export interface ChildHistory {
  /** In the order of day, counter, device and id; the voided among them. */
  readonly sittings: readonly RuledSat[];
  /** What was changed for single days. */
  readonly changes: ReadonlyMap<Day, DayChange>;
  /** Sheets printed, in the log's order. */
  readonly printed: readonly SheetPrinted[];
}

/** The history as the rulings leave it. */
export interface History {
  readonly children: ReadonlyMap<Id, ChildHistory>;
  /** How many records were left out because a later version of the app made them. */
  readonly later: number;
}

/** A child without any days yet. */
export const noHistory: ChildHistory = { sittings: [], changes: new Map(), printed: [] };

interface Growing {
  readonly sittings: RuledSat[];
  readonly changes: Map<Day, DayChange>;
  readonly printed: SheetPrinted[];
}

const kinds: ReadonlySet<HistoryRecord['kind']> = new Set(['sat', 'dayChanged', 'sheetPrinted'] as const);

/** Applies the household's rulings and undoings to history records; any order of arrival, any duplicates. */
export function effectiveHistory(history: readonly HistoryRecord[], household: Household): History {
  const { records, later } = inOrder(history, kinds);
  const children = new Map<Id, Growing>();
  for (const record of records) {
    const child = household.childOf(record) ?? record.child;
    if (household.tombstones.has(child)) continue;
    const own: Growing = children.get(child) ?? { sittings: [], changes: new Map(), printed: [] };
    children.set(child, own);
    if (record.kind === 'sat')
      own.sittings.push({ sat: record, child, rulings: rulingsOf(record, household) });
    else if (household.isUndone(record)) continue;
    else if (record.kind === 'sheetPrinted') own.printed.push(record);
    else {
      own.changes.set(record.day, { ...own.changes.get(record.day), ...record.change });
    }
  }
  for (const { sittings } of children.values()) sittings.sort(bySatOrder);
  return { children, later };
}

/** A sitting's own rulings, and of its sheet's those that say whether the work counts. */
function rulingsOf(sat: Sat, household: Household): SatRulings {
  const own = household.rulingsOn(sat.id);
  if (sat.of === null) return own;
  const { voided, notOwnWork } = household.rulingsOn(sat.of);
  return { ...own, voided: own.voided || voided, notOwnWork: own.notOwnWork || notOwnWork };
}

function bySatOrder({ sat: x }: RuledSat, { sat: y }: RuledSat): number {
  return x.day < y.day ? -1 : x.day > y.day ? 1 : compareStamps(x, y);
}
