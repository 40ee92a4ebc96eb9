import { promisifyRequest } from 'idb-keyval';
import type { HistoryRecord, LogRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { allHistoryRange, homeRange } from './keys';
import type { Log } from './log';
import { read } from './store';

/** The whole history, in lots: all of ten years at once would hold the page for a quarter of a second. */
export function readHistory(log: Log): Promise<HistoryRecord[]> {
  return read(log.store, async (store) => {
    const history: HistoryRecord[] = [];
    for await (const lot of getLotsIn<HistoryRecord>(store, allHistoryRange())) history.push(...lot);
    return history;
  });
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

/** So many sittings keep a page from nothing for longer than a frame or two, on a slow machine too. */
const lotSize = 80;

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
