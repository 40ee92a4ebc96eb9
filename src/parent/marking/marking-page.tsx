import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { findChild } from '../children/name-of';
import { Heading } from '../parts/heading';
import { shortDay } from '../parts/when';
import { place, turnTo } from '../place';
import { insideWords } from '../words';
import { bookOf, type Entry, findEntry } from './book-of';
import { resultSentence } from './result-words';
import { SittingReading } from './sitting-reading';
import { markingWords } from './words';

const pageful = 30;

/** The sheets to mark, newest first, and one of them answer by answer. */
export function MarkingPage({ desk }: { readonly desk: Desk }) {
  const shown = useSignal(pageful);
  const household = desk.household.value;
  const history = desk.history.value;
  if (!history) return <Opening />;
  const opened = place.value.sitting;
  if (opened !== null) {
    const entry = findEntry(household, history, opened);
    return entry ? <SittingReading key={opened} desk={desk} history={history} entry={entry} /> : <Gone />;
  }
  const sheets = bookOf(household, history).filter(({ sat }) => sat.purpose === 'sheet');
  return (
    <>
      <Heading>{markingWords.title}</Heading>
      {sheets.length === 0 && <p>{markingWords.none}</p>}
      <ul class="bare sheets">
        {sheets.slice(0, shown.value).map((entry) => (
          <SheetLine key={entry.sat.id} desk={desk} entry={entry} />
        ))}
      </ul>
      {sheets.length > shown.value && (
        <button
          type="button"
          onClick={() => {
            shown.value += pageful;
          }}
        >
          {markingWords.more}
        </button>
      )}
    </>
  );
}

function SheetLine({ desk, entry }: { readonly desk: Desk; readonly entry: Entry }) {
  const { sat, marked, child } = entry;
  const household = desk.household.value;
  const name = findChild(household, child)?.name ?? '';
  return (
    <li>
      <button type="button" class="link" onClick={() => turnTo('marking', { sitting: sat.id })}>
        {name}, {shortDay(sat.day)}
      </button>
      <span> {resultSentence(sat, marked, household.settings.bandNames)}</span>
    </li>
  );
}

function Opening() {
  return (
    <>
      <Heading>{markingWords.title}</Heading>
      <p role="status">{insideWords.historyLoading}</p>
    </>
  );
}

function Gone() {
  return (
    <>
      <Heading>{markingWords.title}</Heading>
      <p>{markingWords.gone}</p>
      <button type="button" onClick={() => turnTo('marking')}>
        {markingWords.all}
      </button>
    </>
  );
}
