import { foldHousehold } from '../core/household/fold-household';
import { isGone } from '../core/household/gone';
import { preferred } from '../core/household/order';
import type { HouseholdRecord } from '../core/record/household-record';
import type { LogRecord } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import { checkRecord } from '../record-file/check-record';
import { dropCheckpoints, readHead, writeHead } from './head';
import { homeRange, keyOf } from './keys';
import type { Log } from './log';
import { getLots } from './lots';
import { purge } from './purge';
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
  const sound = offered.flatMap((value) => {
    const check = checkRecord(value);
    return 'record' in check ? [check.record] : [];
  });
  const incoming = new Map<Id, LogRecord>();
  for (const record of sound) incoming.set(record.id, preferred(incoming.get(record.id) ?? record, record));

  const merged = await write(log.store, async (store) => {
    const head = await readHead(store);
    const twins = await getTwins(store, incoming);
    const known = [...incoming.values()].filter(({ id }) => twins.has(id));
    const fresh = [...incoming.values()].filter(({ id }) => !twins.has(id));
    const better = known.filter((record) => preferred(twins.get(record.id) ?? record, record) === record);
    for (const { id } of better) {
      const worse = twins.get(id);
      if (worse) store.delete(keyOf(worse));
    }

    const home = await getAll<HouseholdRecord>(store, homeRange());
    const arriving = [...fresh, ...better];
    const household = foldHousehold([...home, ...arriving.filter(isHome)]);
    const staying = arriving.filter((record) => !isGone(household, record));
    for (const record of staying) store.put(record, keyOf(record));
    for (const child of household.tombstones) await purge(store, household, home, child);

    const seq = staying.reduce((highest, record) => Math.max(highest, record.seq), head.seq);
    const gone = [...household.tombstones];
    writeHead(
      store,
      dropCheckpoints(store, { ...head, seq, gone }, () => staying.length > 0),
    );
    const isStaying = new Set(staying);
    const added = fresh.filter((record) => isStaying.has(record)).length;
    return { added, known: known.length, gone: fresh.length - added, hasChanged: staying.length > 0 };
  });
  const { hasChanged, ...counts } = merged;
  if (hasChanged) log.news.tell(null);
  return { ...counts, refused: offered.length - sound.length };
}

/** What is stored under the ids of the incoming records. */
async function getTwins(store: IDBObjectStore, incoming: ReadonlyMap<Id, LogRecord>) {
  const twins = new Map<Id, LogRecord>();
  for await (const lot of getLots(store)) {
    for (const record of lot) if (incoming.has(record.id)) twins.set(record.id, record);
  }
  return twins;
}

function isHome(record: LogRecord): record is HouseholdRecord {
  return keyOf(record).startsWith('home/');
}
