import { promisifyRequest } from 'idb-keyval';
import { foldHousehold } from '../core/household/fold-household';
import { effectiveHistory } from '../core/household/history';
import type { Household } from '../core/household/household';
import type { HouseholdRecord } from '../core/record/household-record';
import type { HistoryRecord } from '../core/record/record';
import { type Day, type Id, recordVersion } from '../core/record/stamp';
import { resumeSummary } from '../core/summary/summarize';
import { emptySummary, type Summary, summaryVersion } from '../core/summary/summary';
import { readHead, writeHead } from './head';
import { checkpointKey, historyRange, homeRange } from './keys';
import type { Log } from './log';
import { getSpan } from './reads';
import { getAll, getOne, read, write } from './store';

/** A child's history up to a day, that day not included, summed up. */
export interface Checkpoint {
  readonly before: Day;
  readonly summary: Summary;
}

/** The records from the checkpoint on; all of them without one. */
export interface Tail {
  readonly checkpoint: Checkpoint | null;
  readonly tail: readonly HistoryRecord[];
}

const version = `${recordVersion}.${summaryVersion}`;
/** Days with anything on them that stay out of a checkpoint, so that the plan can look at them answer by answer. */
const tailDays = 10;

/** All that the kiosk reads of a child's history. */
export function readTailWithCheckpoint(log: Log, household: Household, child: Id): Promise<Tail> {
  return read(log.store, async (store) => {
    const checkpoint = await getCheckpoint(store, child);
    return { checkpoint, tail: await getSpan(store, household, child, checkpoint?.before ?? null, null) };
  });
}

/** Days summed up at once: after ten years were brought in from a file, an idle moment stays short. */
const daysAtOnce = 60;

/**
 * Moves a child's checkpoint up once the tail has grown to twice its days; for idle moments. Whether there is more to be
 * summed up.
 */
export function refreshCheckpoint(log: Log, child: Id, days: number = tailDays): Promise<boolean> {
  return write(log.store, async (store) => {
    const head = await readHead(store);
    if (head.gone.includes(child)) return false;
    const old = await getCheckpoint(store, child);
    const from = old?.before ?? null;
    const inTail = daysOf(await promisifyRequest(store.getAllKeys(historyRange(child, from))));
    const summed = Math.min(inTail.length - days, daysAtOnce);
    const before = inTail[summed];
    if (before === undefined || inTail.length <= 2 * days) return false;
    // Folded here and not taken from the page: another tab may just have ruled on what is summed up now.
    const household = foldHousehold(await getAll<HouseholdRecord>(store, homeRange()));
    const { children } = effectiveHistory(await getSpan(store, household, child, from, before), household);
    const summary = resumeSummary(old?.summary ?? emptySummary, children.get(child)?.sittings ?? []);
    store.put({ v: version, before, summary }, checkpointKey(child));
    writeHead(store, { ...head, reach: { ...head.reach, [child]: before } });
    return inTail.length - summed > 2 * days;
  });
}

async function getCheckpoint(store: IDBObjectStore, child: Id): Promise<Checkpoint | null> {
  const kept = await getOne<Checkpoint & { readonly v: string }>(store, checkpointKey(child));
  return kept?.v === version ? { before: kept.before, summary: kept.summary } : null;
}

function daysOf(keys: readonly IDBValidKey[]): readonly Day[] {
  return [...new Set(keys.map((key) => String(key).split('/')[2] ?? ''))];
}
