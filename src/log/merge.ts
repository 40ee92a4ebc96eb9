import { promisifyRequest } from 'idb-keyval';
import { foldHousehold } from '../core/household/fold-household';
import type { HouseholdRecord } from '../core/record/household-record';
import type { LogRecord } from '../core/record/record';
import { dropCheckpoints, readHead, writeHead } from './head';
import { allHistoryRange, homeRange, keyOf } from './keys';
import type { Log } from './log';
import { purge } from './purge';
import { isRecord } from './record-check';
import { getAll, write } from './store';

/** What became of the records offered: `gone` were of children deleted for good, `refused` are not records. */
export interface Merged {
  readonly added: number;
  readonly known: number;
  readonly gone: number;
  readonly refused: number;
}

/** Adds another device's records: a union by id, in one transaction; tombstones win over everything. */
export async function mergeRecords(log: Log, offered: readonly unknown[]): Promise<Merged> {
  const incoming = new Map(offered.filter(isRecord).map((record) => [keyOf(record), record]));
  const merged = await write(log.store, async (store) => {
    const head = await readHead(store);
    const home = await getAll<HouseholdRecord>(store, homeRange());
    const historyKeys = await promisifyRequest(store.getAllKeys(allHistoryRange()));
    const stored = new Set<IDBValidKey>([...home.map(keyOf), ...historyKeys]);
    const fresh = [...incoming].filter(([key]) => !stored.has(key));

    const wholeHome = [...home, ...fresh.flatMap(([key, record]) => (isHome(key, record) ? [record] : []))];
    const household = foldHousehold(wholeHome);
    const { tombstones } = household;
    const added = fresh.filter(([, record]) => !tombstones.has(household.childOf(record) ?? ''));
    for (const [key, record] of added) store.put(record, key);
    for (const child of tombstones) await purge(store, household, home, child);

    const seq = added.reduce((highest, [, record]) => Math.max(highest, record.seq), head.seq);
    const isStale = () => added.length > 0;
    writeHead(store, dropCheckpoints(store, { ...head, seq, gone: [...tombstones] }, isStale));
    return { added: added.length, known: incoming.size - fresh.length, gone: fresh.length - added.length };
  });
  if (merged.added > 0) log.news.tell(null);
  return { ...merged, refused: offered.filter((record) => !isRecord(record)).length };
}

function isHome(key: string, _record: LogRecord): _record is HouseholdRecord {
  return key.startsWith('home/');
}
