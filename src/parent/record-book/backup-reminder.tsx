import type { Desk } from '../../state/desk';
import { turnTo } from '../place';
import { reminderOf } from './reminder';
import { useRecordBook } from './use-record-book';
import { backupWords } from './words';

/** On Today, once something was sat and the last backup is too old: one sentence and the way to the record book. */
export function BackupReminder({ desk }: { readonly desk: Desk }) {
  const book = useRecordBook(desk).value;
  if (!book || book === 'failed' || !hasSittings(desk)) return null;
  const says = reminderOf(book.backup.value, desk.storage.value.persisted, Date.now());
  if (says === null) return null;
  return (
    <p class="no-print">
      {says}{' '}
      <button type="button" class="link" onClick={() => turnTo('recordBook')}>
        {backupWords.open}
      </button>
    </p>
  );
}

function hasSittings({ history }: Desk): boolean {
  return [...(history.value?.children.values() ?? [])].some(({ sittings }) => sittings.length > 0);
}
