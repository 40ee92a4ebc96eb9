import type { Day, Id } from '../core/record/stamp';
import { checkpointKey, headKey } from './keys';
import { getOne } from './store';
import { LogTroubleError } from './trouble';

/** What every write reads and writes with it: the one small record that keeps tabs in step. */
export interface Head {
  /** The highest counter seen. */
  readonly seq: number;
  /** Children deleted for good, so that nothing of theirs is stored again. */
  readonly gone: readonly Id[];
  /** For each child with a checkpoint, the day it reaches up to, that day itself not included. */
  readonly reach: Readonly<Record<Id, Day>>;
}

/** A new log's. */
export const firstHead: Head = { seq: 0, gone: [], reach: {} };

/** The head of an open log; without one the store was erased while the page was open. */
export async function readHead(store: IDBObjectStore): Promise<Head> {
  const head = await getOne<Head>(store, headKey);
  if (!head) throw new LogTroubleError('gone');
  return head;
}

export function writeHead(store: IDBObjectStore, head: Head): void {
  store.put(head, headKey);
}

/** Lets go of the checkpoints that `isStale` names; the head without them. */
export function dropCheckpoints(
  store: IDBObjectStore,
  head: Head,
  isStale: (child: Id, before: Day) => boolean,
): Head {
  const kept: Record<Id, Day> = {};
  for (const [child, before] of Object.entries(head.reach)) {
    if (isStale(child, before)) store.delete(checkpointKey(child));
    else kept[child] = before;
  }
  return { ...head, reach: kept };
}
