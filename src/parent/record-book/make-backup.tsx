import { useSignal } from '@preact/signals';
import type { MadeFile, RecordBook } from '../../state/record-book/record-book';
import { useActing } from '../acting';
import { Trouble } from '../parts/trouble';
import { download, type GivenOut, giveOut } from './give-out';
import { backupWords } from './words';

export interface MakeBackupProps {
  readonly book: RecordBook;
  /** Whether it is what its place is for. */
  readonly isMain?: boolean;
}

/** The button that writes the file and hands it over. */
export function MakeBackup({ book, isMain = true }: MakeBackupProps) {
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
        <button type="button" class={isMain ? 'main' : ''} aria-disabled={isBusy.value} onClick={make}>
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
