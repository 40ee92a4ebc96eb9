import { type ReadonlySignal, signal } from '@preact/signals';
import { homeOf } from '../../core/household/bring-back';
import { foldHousehold } from '../../core/household/fold-household';
import type { Household } from '../../core/household/household';
import type { LogRecord } from '../../core/record/record';
import type { Sat } from '../../core/record/sat';
import { boatDevice, compareStamps, type Id, recordVersion } from '../../core/record/stamp';
import { type BackupNote, readBackupNote, writeBackupNote } from '../../log/backup-note';
import type { Log } from '../../log/log';
import { eachLot, recordIds } from '../../log/lots';
import { type Merged, mergeRecords } from '../../log/merge';
import { readHousehold } from '../../log/reads';
import { knownKinds } from '../../record-file/check-record';
import type { RecordFile } from '../../record-file/record-file';
import { type ChildInFile, contentsOf, type FileContents } from './file-contents';
import { type MadeFile, makeBackup } from './make-backup';
import { asNewChild } from './new-child-ids';
import { type FileReading, readFile } from './read-file';

export type { BackupNote, ChildInFile, FileContents, FileReading, MadeFile, Merged, RecordFile };

/** Files out and in: fetched when a page asks for it. */
export interface RecordBook {
  readonly backup: ReadonlySignal<BackupNote>;
  /** Writes everything into a file; what stands open is ended and sealed first. */
  makeBackup(): Promise<MadeFile>;
  /** Once a file was handed over. */
  noteBackup(): Promise<void>;
  remindAfter(days: number): Promise<void>;
  /** Reads a file through; nothing is brought in. */
  readFile(file: Blob): Promise<FileReading>;
  /** What a file holds, and what would be new. */
  lookInto(file: RecordFile): Promise<FileContents>;
  /** Brings a file's records in; `asNew` names children deleted for good that are to come back as new ones. */
  bringIn(file: RecordFile, asNew: readonly Id[]): Promise<Merged>;
  /** Everything decided, the newest first: all records that are shown but the sittings, and what took them back. */
  decisions(): Promise<readonly Decision[]>;
}

/** What was decided, whatever it was about. */
export type Decision = Exclude<LogRecord, Sat>;

/** What the record book stands on. */
export interface RecordBookParts {
  readonly log: Log;
  /** Ends and seals whatever is being sat, and waits until it is stored. */
  readonly seal: () => Promise<void>;
  /** Shows what is stored. */
  readonly reload: () => Promise<void>;
}

export async function createRecordBook({ log, seal, reload }: RecordBookParts): Promise<RecordBook> {
  const backup = signal(await readBackupNote(log));

  async function note(changes: Partial<BackupNote>): Promise<void> {
    const next = { ...backup.value, ...changes };
    await writeBackupNote(log, next);
    backup.value = next;
  }

  return {
    backup,
    async makeBackup() {
      await seal();
      return makeBackup(log);
    },
    noteBackup: () => note({ lastAt: log.ports.now() }),
    remindAfter: (days) => note({ remindAfterDays: days }),
    async readFile(file) {
      const reading = await readFile(file);
      return 'file' in reading ? ofThisHousehold(log, reading.file) : reading;
    },
    async lookInto(file) {
      return contentsOf(file, log.device, await readHousehold(log), await recordIds(log));
    },
    async bringIn(file, asNew) {
      await seal();
      const home = await readHousehold(log);
      const wasEmpty = foldHousehold(home).children.length === 0;
      const household = foldHousehold([...home, ...homeOf(file.records)]);
      const copies = await Promise.all(asNew.map((child) => asNewChild(child, file.records, household)));
      const offered: readonly LogRecord[] = [...file.records, ...copies.flat()];
      const merged = await mergeRecords(log, offered);
      await reload();
      if (wasEmpty) await note({ lastAt: file.madeAt });
      return merged;
    },
    async decisions() {
      const decided: Decision[] = [];
      await eachLot(log, (lot) => {
        for (const record of lot) if (record.kind !== 'sat' && isShown(record)) decided.push(record);
      });
      const household = foldHousehold(homeOf(decided));
      return decided
        .filter((record) => record.kind === 'childDeleted' || !isOfGone(household, record))
        .sort((x, y) => compareStamps(y, x));
    },
  };
}

function isShown({ v, kind }: LogRecord): boolean {
  return v <= recordVersion && knownKinds.has(kind);
}

function isOfGone(household: Household, record: LogRecord): boolean {
  return household.tombstones.has(household.childOf(record) ?? '');
}

/** The invented household and a real one never mix. */
function ofThisHousehold(log: Log, file: RecordFile): FileReading {
  const isOfBoat = file.device === boatDevice;
  if (isOfBoat === (log.device === boatDevice)) return { file };
  const reason = isOfBoat
    ? 'This file is of the boat, the invented household. It is not brought into a real one.'
    : 'This file is of a real household. It is not brought onto the boat.';
  return { trouble: { what: 'notOurs', reason } };
}
