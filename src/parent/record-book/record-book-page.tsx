import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { BackupSection } from './backup-section';
import { BringIn } from './bring-in';
import { CsvSection } from './csv-section';
import { DecisionsSection } from './decisions-section';
import { useRecordBook } from './use-record-book';
import { bookWords, restoreWords } from './words';
import { YearsSection } from './years-section';

/** The record as a whole: kept, carried, shown. */
export function RecordBookPage({ desk }: { readonly desk: Desk }) {
  const book = useRecordBook(desk).value;
  return (
    <>
      <Heading>{bookWords.title}</Heading>
      <p>{bookWords.lead}</p>
      {!book && <p role="status">{bookWords.opening}</p>}
      {book === 'failed' && <p class="trouble">{bookWords.notFetched}</p>}
      {book && book !== 'failed' && (
        <>
          <BackupSection desk={desk} book={book} />
          <section aria-label={restoreWords.title}>
            <h2>{restoreWords.title}</h2>
            <p>{restoreWords.lead}</p>
            <BringIn book={book} />
          </section>
          <CsvSection desk={desk} />
          <YearsSection desk={desk} />
          <DecisionsSection desk={desk} book={book} />
        </>
      )}
    </>
  );
}
