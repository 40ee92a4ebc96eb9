import type { DayChanged, HouseholdRecord, SheetPrinted } from './household-record';
import type { Sat } from './sat';
import type { Stamp } from './stamp';

/** The part of the log that grows with the days. */
export type HistoryRecord = Sat | DayChanged | SheetPrinted;

const historyKinds: Readonly<Record<HistoryRecord['kind'], true>> = {
  sat: true,
  dayChanged: true,
  sheetPrinted: true,
};

/** Whether a record belongs to a child's days: it is kept by child and day, and read with them. */
export function isOfHistory(record: LogRecord): record is HistoryRecord {
  return record.kind in historyKinds;
}

/** Any record of the log. */
export type LogRecord = HouseholdRecord | HistoryRecord;

/** A record before the log has stamped it. */
export type Draft = LogRecord extends infer R ? (R extends LogRecord ? Omit<R, keyof Stamp> : never) : never;
