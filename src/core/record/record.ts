import type { DayChanged, HouseholdRecord } from './household-record';
import type { Sat } from './sat';
import type { Stamp } from './stamp';

/** The part of the log that grows with the days. */
export type HistoryRecord = Sat | DayChanged;

/** Any record of the log. */
export type LogRecord = HouseholdRecord | HistoryRecord;

/** A record before the log has stamped it. */
export type Draft = LogRecord extends infer R ? (R extends LogRecord ? Omit<R, keyof Stamp> : never) : never;
