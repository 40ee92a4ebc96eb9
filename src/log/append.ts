import type { Draft, LogRecord } from '../core/record/record';
import { type Day, type Id, recordVersion } from '../core/record/stamp';
import { dropCheckpoints, type Head, readHead, writeHead } from './head';
import { keyOf } from './keys';
import type { Log } from './log';
import { write } from './store';

/** Stamps the drafts and adds them, in one transaction that is complete when this resolves. */
export async function append(log: Log, drafts: readonly Draft[]): Promise<readonly LogRecord[]> {
  if (drafts.length === 0) return [];
  const records = await write(log.store, async (store) => {
    const head = await readHead(store);
    const made = drafts.map((draft, index) => stamp(log, draft, head.seq + index + 1, log.ports.randomId()));
    put(store, head, made);
    return made;
  });
  log.news.tell(records);
  return records;
}

/** A draft with its stamp. What a child without times sat carries the start of its day as its time. */
export function stamp(log: Log, draft: Draft, seq: number, id: Id): LogRecord {
  const at = draft.kind === 'sat' && !draft.keepTimes ? draft.startedAt : log.ports.now();
  // A spread of a union is not seen as one of its members.
  return { ...draft, id, v: recordVersion, seq, device: log.device, at } as LogRecord;
}

/** Adds stamped records inside a transaction; what is of a child deleted meanwhile is let go. */
export function put(store: IDBObjectStore, head: Head, records: readonly LogRecord[]): void {
  for (const record of records) if (!isGone(head, record)) store.put(record, keyOf(record));
  const seq = records.reduce((highest, record) => Math.max(highest, record.seq), head.seq);
  const isStale = (child: Id, before: Day) => records.some((record) => reachesInto(record, child, before));
  writeHead(store, dropCheckpoints(store, { ...head, seq }, isStale));
}

// A ruling carries the child its target was stored for, which may belong to another by now.
function isGone(head: Head, record: LogRecord): boolean {
  return 'child' in record && record.kind !== 'ruled' && head.gone.includes(record.child);
}

function reachesInto(record: LogRecord, child: Id, before: Day): boolean {
  switch (record.kind) {
    case 'sat':
      return record.child === child && record.day < before;
    case 'ruled':
      return record.targetDay < before;
    case 'undone':
      // What it takes back is not looked up: taking back is rare, and a checkpoint is made again when idle.
      return true;
    default:
      return false;
  }
}
