import type { BackupNote } from '../../state/record-book/record-book';
import { backupWords } from './words';

const dayMs = 86_400_000;
/** Where the browser may clear what is stored, a backup should never be older, in days. */
const weekly = 7;

/** Why it is time for a backup, in words; `null` while it is not. `persisted`: whether the browser keeps what it has. */
export function reminderOf(
  { lastAt, remindAfterDays }: BackupNote,
  persisted: boolean | null,
  nowMs: number,
): string | null {
  if (lastAt === null) return backupWords.never;
  const days = Math.floor((nowMs - lastAt) / dayMs);
  const isPromised = persisted === true;
  if (!isPromised && days >= weekly) return `${backupWords.old(days)} ${backupWords.notPromised}`;
  return days >= remindAfterDays ? backupWords.old(days) : null;
}
