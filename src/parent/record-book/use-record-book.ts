import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Desk } from '../../state/desk';
import type { RecordBook } from '../../state/record-book/record-book';

/** The record book, once its code is there; `failed` when it could not be fetched. */
export function useRecordBook(desk: Desk): ReadonlySignal<RecordBook | 'failed' | null> {
  const opened = useSignal<RecordBook | 'failed' | null>(null);
  useEffect(() => {
    desk.openRecordBook().then(
      (book) => {
        opened.value = book;
      },
      () => {
        opened.value = 'failed';
      },
    );
  }, [desk.openRecordBook]);
  return opened;
}
