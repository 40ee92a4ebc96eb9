import { promisifyRequest } from 'idb-keyval';
import type { Household, Move } from '../core/household/household';
import type { HouseholdRecord } from '../core/record/household-record';
import type { HistoryRecord } from '../core/record/record';
import type { Day, Id } from '../core/record/stamp';
import { historyRange, homeRange, under } from './keys';
import type { Log } from './log';
import { getAll, read } from './store';

/** The small part that is read whole at every start. */
export function readHousehold(log: Log): Promise<HouseholdRecord[]> {
  return read(log.store, (store) => getAll<HouseholdRecord>(store, homeRange()));
}

/** One child's history from a day on, with what rulings moved to the child from others. */
export function readTail(log: Log, household: Household, child: Id, fromDay: Day): Promise<HistoryRecord[]> {
  return read(log.store, (store) => getSpan(store, household, child, fromDay, null));
}

/** One child's history, with what rulings moved to it. */
export function readHistoryOf(log: Log, household: Household, child: Id): Promise<HistoryRecord[]> {
  return read(log.store, (store) => getSpan(store, household, child, null, null));
}

/** The last day a child has anything on: a device whose clock was set back shows by a day before it. */
export function latestDay(log: Log, child: Id): Promise<Day | null> {
  return read(log.store, async (store) => {
    const cursor = await promisifyRequest<IDBCursor | null>(
      store.openKeyCursor(under(`hist/${child}`), 'prev'),
    );
    return typeof cursor?.key === 'string' ? (cursor.key.split('/')[2] ?? null) : null;
  });
}

/** A child's records in a span of days, inside a transaction; `null` leaves an end open. */
export async function getSpan(
  store: IDBObjectStore,
  household: Household,
  child: Id,
  from: Day | null,
  before: Day | null,
): Promise<HistoryRecord[]> {
  const own = getAll<HistoryRecord>(store, historyRange(child, from, before));
  const moved = household.moves
    .filter(
      ({ to, day }) => to === child && (from === null || day >= from) && (before === null || day < before),
    )
    .map((move) => getMoved(store, move));
  return [...(await own), ...(await Promise.all(moved)).flat()];
}

/** What a ruling moved, its rows and mending too, from where it is stored; nothing when it has not arrived. */
export async function getMoved(store: IDBObjectStore, { from, day, target }: Move): Promise<HistoryRecord[]> {
  const records = await getAll<HistoryRecord>(store, under(`hist/${from}/${day}`));
  return records.filter((record) => record.id === target || (record.kind === 'sat' && record.of === target));
}
