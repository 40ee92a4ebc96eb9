import type { HistoryRecord, LogRecord } from '../core/record/record';
import { highestSeq } from './keys';

const idShape = /^[A-Za-z0-9-]{1,64}$/;
const dayShape = /^\d{4}-\d\d-\d\d$/;
const ofHistory: ReadonlySet<string> = new Set<HistoryRecord['kind']>(['sat', 'dayChanged', 'sheetPrinted']);

/**
 * Whether a value from outside carries the stamp, and the places, that a record is kept by. A kind or version that
 * this build does not know passes: it is kept for the build that does.
 */
export function isRecord(value: unknown): value is LogRecord {
  if (typeof value !== 'object' || value === null) return false;
  const { id, v, seq, device, at, kind, child, target, day, targetDay } = value as Record<string, unknown>;
  return (
    isId(id) &&
    isId(device) &&
    isCount(v) &&
    v >= 1 &&
    isCount(seq) &&
    seq <= highestSeq &&
    Number.isFinite(at) &&
    typeof kind === 'string' &&
    [child, target].every((other) => other === undefined || isId(other)) &&
    [day, targetDay].every((other) => other === undefined || isDay(other)) &&
    hasPlaces(kind, child, day)
  );
}

// Without these a record of the history has no key to be kept by.
function hasPlaces(kind: string, child: unknown, day: unknown): boolean {
  return ofHistory.has(kind) ? child !== undefined && day !== undefined : true;
}

function isId(value: unknown): value is string {
  return typeof value === 'string' && idShape.test(value);
}

function isDay(value: unknown): value is string {
  return typeof value === 'string' && dayShape.test(value);
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}
