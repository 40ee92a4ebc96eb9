import { format } from 'date-fns';
import type { Desk } from '../../state/desk';
import type { RecordBook } from '../../state/record-book/record-book';
import { useActing } from '../acting';
import { SelectField } from '../parts/select-field';
import { storageText } from '../parts/storage-words';
import { Trouble } from '../parts/trouble';
import { MakeBackup } from './make-backup';
import { reminderOf } from './reminder';
import { backupWords } from './words';

export interface BookProps {
  readonly desk: Desk;
  readonly book: RecordBook;
}

const remindChoices = [7, 14, 30, 90] as const;

/** One tap, one file; when the last one was made, and what the browser promises. */
export function BackupSection({ desk, book }: BookProps) {
  const { lastAt, remindAfterDays } = book.backup.value;
  const { persisted } = desk.storage.value;
  const reminder = reminderOf(book.backup.value, persisted, Date.now());
  const { act, trouble } = useActing();
  return (
    <section aria-label={backupWords.title}>
      <h2>{backupWords.title}</h2>
      <p>{backupWords.lead}</p>
      {reminder ? (
        <p class="said">{reminder}</p>
      ) : (
        lastAt !== null && <p>{backupWords.last(format(lastAt, 'd MMMM yyyy, HH:mm'))}</p>
      )}
      <p class="hint">{storageText(persisted)}</p>
      <MakeBackup book={book} />
      <SelectField
        label={backupWords.remind}
        hint={backupWords.remindHint}
        options={remindChoices.map((value) => ({ value, label: backupWords.days(value) }))}
        value={remindAfterDays}
        onChoose={(days) => act(() => book.remindAfter(days))}
      />
      <Trouble sentence={trouble} />
    </section>
  );
}
