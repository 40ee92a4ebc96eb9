import { useSignal } from '@preact/signals';
import { format } from 'date-fns';
import type { Desk } from '../../state/desk';
import type { MadeFile, RecordBook } from '../../state/record-book/record-book';
import { useActing } from '../acting';
import { SelectField } from '../parts/select-field';
import { storageWords } from '../parts/storage-words';
import { Trouble } from '../parts/trouble';
import { download, type GivenOut, giveOut } from './give-out';
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
      <p class="hint">
        {persisted === null
          ? storageWords.notKnown
          : persisted
            ? storageWords.kept
            : storageWords.mayBeCleared}
      </p>
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

/** The button that writes the file and hands it over. */
function MakeBackup({ book }: Pick<BookProps, 'book'>) {
  const { act, isBusy, trouble } = useActing();
  const made = useSignal<(MadeFile & { readonly how: GivenOut }) | null>(null);

  const make = () =>
    act(async () => {
      made.value = null;
      const file = await book.makeBackup();
      const how = await giveOut(file.file);
      if (how !== 'givenUp') await book.noteBackup();
      made.value = { ...file, how };
    });

  const save = (file: MadeFile) =>
    act(async () => {
      download(file.file);
      await book.noteBackup();
      made.value = { ...file, how: 'downloaded' };
    });

  const { value } = made;
  return (
    <>
      <div class="actions">
        <button type="button" class="main" aria-disabled={isBusy.value} onClick={make}>
          {backupWords.make}
        </button>
        {value?.how === 'givenUp' && (
          <button type="button" aria-disabled={isBusy.value} onClick={() => save(value)}>
            {backupWords.download}
          </button>
        )}
      </div>
      <p class="kept" role="status">
        {isBusy.value ? backupWords.making : value && saidOf(value)}
      </p>
      <Trouble sentence={trouble} />
    </>
  );
}

function saidOf({ file, records, how }: MadeFile & { readonly how: GivenOut }): string {
  switch (how) {
    case 'shared':
      return backupWords.shared(records);
    case 'downloaded':
      return backupWords.downloaded(file.name, records);
    case 'givenUp':
      return backupWords.givenUp;
  }
}
