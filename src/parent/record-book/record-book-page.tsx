import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { BackupSection } from './backup-section';
import { BringIn } from './bring-in';
import { CsvSection } from './csv-section';
import { DecisionsSection } from './decisions-section';
import { TermReport } from './report/term-report';
import { reportWords } from './report/words';
import { useRecordBook } from './use-record-book';
import { bookWords, restoreWords } from './words';
import { YearsSection } from './years-section';

/** The record as a whole: kept, carried, shown. */
export function RecordBookPage({ desk }: { readonly desk: Desk }) {
  const book = useRecordBook(desk).value;
  const isReporting = useSignal(false);
  return (
    <>
      <div class={isReporting.value ? 'no-print' : ''}>
        <Heading>{bookWords.title}</Heading>
        {!isReporting.value && <p>{bookWords.lead}</p>}
      </div>
      {!book && <p role="status">{bookWords.opening}</p>}
      {book === 'failed' && <p class="trouble">{bookWords.notFetched}</p>}
      {book && book !== 'failed' && isReporting.value && (
        <>
          <button
            type="button"
            class="link no-print"
            onClick={() => {
              isReporting.value = false;
            }}
          >
            {reportWords.back}
          </button>
          <TermReport desk={desk} book={book} />
        </>
      )}
      {book && book !== 'failed' && !isReporting.value && (
        <>
          <BackupSection desk={desk} book={book} />
          <section aria-label={restoreWords.title}>
            <h2>{restoreWords.title}</h2>
            <p>{restoreWords.lead}</p>
            <BringIn book={book} />
          </section>
          <section aria-label={reportWords.title}>
            <h2>{reportWords.title}</h2>
            <p>{reportWords.lead}</p>
            <div class="actions">
              <button
                type="button"
                onClick={() => {
                  isReporting.value = true;
                }}
              >
                {reportWords.open}
              </button>
            </div>
          </section>
          <CsvSection desk={desk} />
          <YearsSection desk={desk} />
          <DecisionsSection desk={desk} book={book} />
        </>
      )}
    </>
  );
}
