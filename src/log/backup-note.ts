import type { Log } from './log';
import { getOne, read, write } from './store';

const backupKey = 'meta/backup';

/** What this device knows of its backups: kept on it alone, and in no file. */
export interface BackupNote {
  /** When a file was last made here or read here into an empty household, ms since 1970. */
  readonly lastAt: number | null;
  /** After how many days without one the parent is reminded. */
  readonly remindAfterDays: number;
}

const noNote: BackupNote = { lastAt: null, remindAfterDays: 14 };

/** The note, whatever became of it: a damaged one only reminds too soon. */
export async function readBackupNote(log: Log): Promise<BackupNote> {
  const kept = await read(log.store, (store) => getOne<Partial<BackupNote>>(store, backupKey));
  const { lastAt, remindAfterDays } = { ...noNote, ...kept };
  return {
    lastAt: Number.isFinite(lastAt) ? lastAt : null,
    remindAfterDays: remindAfterDays > 0 ? remindAfterDays : noNote.remindAfterDays,
  };
}

export function writeBackupNote(log: Log, note: BackupNote): Promise<void> {
  return write(log.store, (store) => {
    store.put(note, backupKey);
  });
}
