import type { LogRecord } from '../core/record/record';
import type { Day, Id, Stamp } from '../core/record/stamp';

// Ten times `highestSeq` still sorts as text.
const seqDigits = 12;

/** Where a record is kept: by kind, child, local day and counter. A kind not known yet is placed by its shape. */
export function keyOf(record: LogRecord): string {
  const stamp = stampKey(record);
  // Heard on a day, and yet of the household: the next check counts from it, however long ago.
  if (record.kind === 'spokenChecked') return `home/${stamp}`;
  return 'day' in record && 'child' in record
    ? `hist/${record.child}/${record.day}/${stamp}`
    : `home/${stamp}`;
}

function stampKey({ seq, device, id }: Stamp): string {
  return `${String(seq).padStart(seqDigits, '0')}-${device}-${id}`;
}

/** Everything under a path. */
export function under(path: string): IDBKeyRange {
  return IDBKeyRange.bound(`${path}/`, pastEnd(path), false, true);
}

/** A child's history from a day on, or up to but without a day. */
export function historyRange(child: Id, from: Day | null, before: Day | null = null): IDBKeyRange {
  const path = `hist/${child}`;
  return IDBKeyRange.bound(
    `${path}/${from ?? ''}`,
    before === null ? pastEnd(path) : `${path}/${before}`,
    false,
    true,
  );
}

// '0' is the character after '/'.
function pastEnd(path: string): string {
  return `${path}0`;
}

export const homeRange = () => under('home');
export const allHistoryRange = () => under('hist');

export const journalPath = (sitting: Id) => `journal/${sitting}`;
export const headKey = 'meta/head';
export const deviceKey = 'meta/device';
export const checkpointKey = (child: Id) => `checkpoint/${child}`;
