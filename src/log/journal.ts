import type { LogRecord } from '../core/record/record';
import type { Away, Sat, SittingPlan, SittingStart, Visit } from '../core/record/sat';
import type { Id, Stamp } from '../core/record/stamp';
import { put, stamp } from './append';
import { readHead } from './head';
import { journalPath, under } from './keys';
import type { Log } from './log';
import { getAll, read, write } from './store';

/** A sitting that was being sat: what is known of it when it was broken off. */
export interface OpenJournal {
  /** The sitting's id, and its record's once it is sealed. */
  readonly id: Id;
  readonly plan: SittingPlan;
  readonly start: SittingStart;
  readonly visits: readonly Visit[];
  readonly away: readonly Away[];
}

type Entry =
  | { readonly what: 'head'; readonly id: Id; readonly plan: SittingPlan; readonly start: SittingStart }
  | { readonly what: 'visit'; readonly id: Id; readonly index: number; readonly visit: Visit }
  | { readonly what: 'away'; readonly id: Id; readonly index: number; readonly away: Away };

/** Opens the journal of a new sitting; its id is given, so that a child never waits for the disk to begin. */
export function openJournal(log: Log, id: Id, plan: SittingPlan, start: SittingStart): Promise<void> {
  return putEntry(log, { what: 'head', id, plan, start });
}

/** Keeps one visit; the same index again amends it. */
export function noteVisit(log: Log, id: Id, index: number, visit: Visit): Promise<void> {
  return putEntry(log, { what: 'visit', id, index, visit });
}

/** Keeps one span away; the same index again amends it. */
export function noteAway(log: Log, id: Id, index: number, away: Away): Promise<void> {
  return putEntry(log, { what: 'away', id, index, away });
}

/** The sittings that stand open, such as after a crash. */
export async function openJournals(log: Log): Promise<OpenJournal[]> {
  const entries = await read(log.store, (store) => getAll<Entry>(store, under('journal')));
  return entries.flatMap((head) => {
    if (head.what !== 'head') return [];
    const own = entries.filter(({ id }) => id === head.id);
    const visits = own.flatMap((entry) => (entry.what === 'visit' ? [entry] : []));
    const away = own.flatMap((entry) => (entry.what === 'away' ? [entry] : []));
    return [
      {
        id: head.id,
        plan: head.plan,
        start: head.start,
        visits: unbroken(visits).map(({ visit }) => visit),
        away: unbroken(away).map((entry) => entry.away),
      },
    ];
  });
}

/**
 * Ends a journal and adds the sitting's record in one transaction. Sealing twice gives the record that is there;
 * without a journal (it could not be opened) the record is added all the same.
 */
export async function sealJournal(log: Log, id: Id, draft: Omit<Sat, keyof Stamp>): Promise<LogRecord> {
  const { record, isNew } = await write(log.store, async (store) => {
    const head = await readHead(store);
    const day = await getAll<LogRecord>(store, under(`hist/${draft.child}/${draft.day}`));
    store.delete(under(journalPath(id)));
    const sealed = day.find((other) => other.id === id);
    if (sealed) return { record: sealed, isNew: false };
    const made = stamp(log, draft, head.seq + 1, id);
    put(store, head, [made]);
    return { record: made, isNew: true };
  });
  if (isNew) log.news.tell([record]);
  return record;
}

/** Forgets a sitting of which nothing was answered. */
export function dropJournal(log: Log, id: Id): Promise<void> {
  return write(log.store, (store) => {
    store.delete(under(journalPath(id)));
  });
}

/** Forgets every open sitting of a child, inside a transaction. */
export async function dropJournalsOf(store: IDBObjectStore, child: Id): Promise<void> {
  const entries = await getAll<Entry>(store, under('journal'));
  for (const entry of entries) {
    if (entry.what === 'head' && entry.plan.child === child) store.delete(under(journalPath(entry.id)));
  }
}

function putEntry(log: Log, entry: Entry): Promise<void> {
  return write(log.store, async (store) => {
    // Where the store was erased under the page, an answer alone would be taken for a log.
    await readHead(store);
    store.put(entry, entryKey(entry));
  });
}

function entryKey(entry: Entry): string {
  const path = journalPath(entry.id);
  return entry.what === 'head'
    ? `${path}/head`
    : `${path}/${entry.what}/${String(entry.index).padStart(6, '0')}`;
}

// Each is written before the next, so a hole means a write that was never acknowledged.
function unbroken<E extends { readonly index: number }>(entries: readonly E[]): readonly E[] {
  const end = entries.findIndex(({ index }, place) => index !== place);
  return end < 0 ? entries : entries.slice(0, end);
}
