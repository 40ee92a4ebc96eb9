import { homeOf } from '../../core/household/bring-back';
import { foldHousehold } from '../../core/household/fold-household';
import { isGone } from '../../core/household/gone';
import type { Household } from '../../core/household/household';
import type { HouseholdRecord } from '../../core/record/household-record';
import type { LogRecord } from '../../core/record/record';
import { type Day, type Id, recordVersion } from '../../core/record/stamp';
import type { RecordFile } from '../../record-file/record-file';

/** A child in a file, before anything is brought in. */
export interface ChildInFile {
  readonly id: Id;
  readonly name: string;
  /** Whether this device knows the child; `deleted`: it was deleted for good here, or by a file brought in. */
  readonly state: 'here' | 'new' | 'deleted';
  /** Another child of this device has the same name: both will be kept, as two. */
  readonly hasNamesake: boolean;
  readonly sittings: Counted;
}

/** How many there are in a file, how many of them would be new here, and the days they span. */
export interface Counted {
  readonly all: number;
  readonly fresh: number;
  readonly firstDay: Day | null;
  readonly lastDay: Day | null;
}

/** What a file holds, and what would be new. */
export interface FileContents {
  /** When the file was made, ms since 1970. */
  readonly madeAt: number;
  /** Whether this device made it. */
  readonly isOwn: boolean;
  readonly children: readonly ChildInFile[];
  /** Decisions: rulings, settings, sets, whatever is not a sitting. */
  readonly decisions: Pick<Counted, 'all' | 'fresh'>;
  /** Names of children that this device has and that the file says were deleted for good. */
  readonly deletes: readonly string[];
  /** Records that a later version made. */
  readonly later: number;
  /** How many records would be new; those of deleted children not among them. */
  readonly fresh: number;
}

/** Sets a file beside what is stored; `stored` are the ids of all of it. */
export function contentsOf(
  file: RecordFile,
  device: Id,
  home: readonly HouseholdRecord[],
  stored: ReadonlySet<Id>,
): FileContents {
  const here = foldHousehold(home);
  const theirs = foldHousehold(homeOf(file.records).filter(({ kind }) => kind !== 'childDeleted'));
  const both = foldHousehold([...home, ...homeOf(file.records)]);
  const isFresh = (record: LogRecord) => !stored.has(record.id) && !isGone(both, record);
  const decided = file.records.filter(({ kind }) => kind !== 'sat');
  return {
    madeAt: file.madeAt,
    isOwn: file.device === device,
    children: theirs.children.map(({ id, name }) => ({
      id,
      name,
      state: both.tombstones.has(id)
        ? 'deleted'
        : here.children.some((child) => child.id === id)
          ? 'here'
          : 'new',
      hasNamesake: here.children.some((child) => child.id !== id && child.name === name),
      sittings: countSittings(id, file.records, both, isFresh),
    })),
    decisions: { all: decided.length, fresh: decided.filter(isFresh).length },
    deletes: here.children.filter(({ id }) => both.tombstones.has(id)).map(({ name }) => name),
    later: file.records.filter(({ v }) => v > recordVersion).length,
    fresh: file.records.filter(isFresh).length,
  };
}

function countSittings(
  child: Id,
  records: readonly LogRecord[],
  both: Household,
  isFresh: (record: LogRecord) => boolean,
): Counted {
  const own = records.flatMap((record) =>
    record.kind === 'sat' && both.childOf(record) === child ? [record] : [],
  );
  const days = own.map(({ day }) => day).sort();
  return {
    all: own.length,
    fresh: own.filter(isFresh).length,
    firstDay: days[0] ?? null,
    lastDay: days.at(-1) ?? null,
  };
}
