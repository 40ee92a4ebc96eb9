import type { HouseholdRecord, Ruling } from '../record/household-record';
import { isOfHistory, type LogRecord } from '../record/record';
import { type Id, recordVersion } from '../record/stamp';
import type { Household } from './household';

/**
 * A child's own records among some: what is the child's after the rulings that `household` knows, and every undoing
 * that reaches one of them. The tombstone is not among them.
 */
export function recordsOf(child: Id, records: readonly LogRecord[], household: Household): LogRecord[] {
  const own = records.filter(
    (record) => record.kind !== 'childDeleted' && household.childOf(record) === child,
  );
  const ids = new Set(own.map(({ id }) => id));
  const undoings = records.flatMap((record) => (record.kind === 'undone' ? [record] : []));
  // An undoing stands after what it takes back, so one pass in the log's order finds those of undoings too.
  for (const undoing of undoings.toSorted((x, y) => x.seq - y.seq)) {
    if (!ids.has(undoing.target)) continue;
    ids.add(undoing.id);
    own.push(undoing);
  }
  return own;
}

/** Records under other ids; whatever they say of each other says it of the new ones. */
export function renamed(records: readonly LogRecord[], newIds: ReadonlyMap<Id, Id>): LogRecord[] {
  const to = (id: Id) => newIds.get(id) ?? id;
  return records.map((record) => {
    const own = { ...record, id: to(record.id), ...('child' in record && { child: to(record.child) }) };
    return { ...own, ...references(record, to) } as LogRecord;
  });
}

/** The fields of a record, its own id and child apart, that name another record or child. */
function references(record: LogRecord, to: (id: Id) => Id): object {
  // Of a later version's record only what it is kept by can be known.
  if (record.v > recordVersion) return 'target' in record ? { target: to(record.target) } : {};
  switch (record.kind) {
    case 'sat':
      return {
        of: record.of === null ? null : to(record.of),
        ...(record.trial && { trial: { ...record.trial, trial: to(record.trial.trial) } }),
        ...(record.spread && { spread: { ...record.spread, spread: to(record.spread.spread) } }),
      };
    case 'ruled':
      return { target: to(record.target), ruling: renamedRuling(record.ruling, to) };
    case 'undone':
      return { target: to(record.target) };
    case 'trialStopped':
      return { trial: to(record.trial) };
    default:
      return {};
  }
}

function renamedRuling(ruling: Ruling, to: (id: Id) => Id): Ruling {
  return ruling.what === 'wrongChild' ? { ...ruling, child: to(ruling.child) } : ruling;
}

/** The household's part of some records: what the fold takes. */
export function homeOf(records: readonly LogRecord[]): HouseholdRecord[] {
  return records.filter((record): record is HouseholdRecord => !isOfHistory(record));
}
