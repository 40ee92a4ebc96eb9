import { promisifyRequest } from 'idb-keyval';
import type { Household, Move } from '../core/household/household';
import type { HouseholdRecord } from '../core/record/household-record';
import type { HistoryRecord, LogRecord } from '../core/record/record';
import type { Day, Id } from '../core/record/stamp';
import { allHistoryRange, historyRange, homeRange, under } from './keys';
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

/** The whole history, in lots: all of ten years at once would hold the page for a quarter of a second. */
export function readHistory(log: Log): Promise<HistoryRecord[]> {
  return read(log.store, async (store) => {
    const history: HistoryRecord[] = [];
    for await (const lot of getLotsIn<HistoryRecord>(store, allHistoryRange())) history.push(...lot);
    return history;
  });
}

/** One child's history, with what rulings moved to it. */
export function readHistoryOf(log: Log, household: Household, child: Id): Promise<HistoryRecord[]> {
  return read(log.store, (store) => getSpan(store, household, child, null, null));
}

/** Every record: the household's, then the history's. */
export async function allRecords(log: Log): Promise<LogRecord[]> {
  const all: LogRecord[] = [];
  await eachLot(log, (lot) => all.push(...lot));
  return all;
}

/** The ids of all that is stored. */
export async function recordIds(log: Log): Promise<ReadonlySet<Id>> {
  const ids = new Set<Id>();
  await eachLot(log, (lot) => {
    for (const { id } of lot) ids.add(id);
  });
  return ids;
}

/** Every record in lots, for a backup: as they stood at one moment, and with room between the lots to do other things. */
export function eachLot(log: Log, take: (lot: readonly LogRecord[]) => void): Promise<void> {
  return read(log.store, async (store) => {
    for await (const lot of getLots(store)) take(lot);
  });
}

/** A few hundred sittings take a few milliseconds to bring in. */
const lotSize = 250;

/** Every record in lots, inside a transaction: the household's, then the history's. */
export async function* getLots(store: IDBObjectStore): AsyncGenerator<readonly LogRecord[]> {
  for (const whole of [homeRange(), allHistoryRange()]) yield* getLotsIn<LogRecord>(store, whole);
}

async function* getLotsIn<T>(store: IDBObjectStore, whole: IDBKeyRange): AsyncGenerator<readonly T[]> {
  let left: IDBKeyRange | null = whole;
  while (left) {
    const keys: readonly IDBValidKey[] = await promisifyRequest(store.getAllKeys(left, lotSize));
    const last = keys.at(-1);
    if (last !== undefined) yield await promisifyRequest<T[]>(store.getAll(left, keys.length));
    left = keys.length < lotSize ? null : IDBKeyRange.bound(last, whole.upper, true, whole.upperOpen);
  }
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
