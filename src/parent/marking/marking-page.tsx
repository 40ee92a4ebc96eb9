import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { findChild } from '../children/name-of';
import { ChildFilter, filteredChild } from '../parts/child-filter';
import { Heading } from '../parts/heading';
import { longDay, shortDay } from '../parts/when';
import { place, turnTo } from '../place';
import { insideWords } from '../words';
import { bookOf, byDay, type Entry, findEntry } from './book-of';
import { needingOf } from './needing';
import { resultSentence } from './result-words';
import { SittingReading } from './sitting-reading';
import { markingWords } from './words';

const pageful = 30;

/** The sheets to mark, those that need the parent first, then the newest; and one of them answer by answer. */
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
  const needing = needingOf(sheets, household, desk.days.value, desk.today.value);
  const only = filteredChild(household);
  const rest = sheets.filter((entry) => !needing.has(entry) && (only === null || entry.child === only));
  const days = byDay(rest.slice(0, shown.value));
  return (
    <>
      <Heading>{markingWords.title}</Heading>
      {sheets.length === 0 && <p>{markingWords.none}</p>}
      {needing.size > 0 && (
        <section class="card">
          <h2>{markingWords.needs}</h2>
          <ul class="bare sheets">
            {[...needing].map(([entry, why]) => (
              <li key={entry.sat.id}>
                <SheetLink desk={desk} entry={entry} day={shortDay(entry.sat.day)} />{' '}
                <span>
                  {resultSentence(entry.sat, entry.marked, household.settings.bandNames)} {why}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {household.children.length > 1 && sheets.length > 0 && (
        <ChildFilter household={household} page="marking" />
      )}
      {days.map(([day, entries]) => (
        <section key={day}>
          <h2 class="day">{longDay(day)}</h2>
          <ul class="bare sheets">
            {entries.map((entry) => (
              <li key={entry.sat.id}>
                <SheetLink desk={desk} entry={entry} day={null} />{' '}
                <span>{resultSentence(entry.sat, entry.marked, household.settings.bandNames)}</span>
              </li>
            ))}
          </ul>
        </section>
      ))}
      {rest.length > shown.value && (
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

interface SheetLinkProps {
  readonly desk: Desk;
  readonly entry: Entry;
  /** The day where no heading tells it. */
  readonly day: string | null;
}

function SheetLink({ desk, entry, day }: SheetLinkProps) {
  const { sat, child } = entry;
  const name = findChild(desk.household.value, child)?.name ?? '';
  return (
    <button
      type="button"
      class="link"
      aria-label={`${name}, ${shortDay(sat.day)}`}
      onClick={() => turnTo('marking', { sitting: sat.id })}
    >
      {day === null ? name : `${name}, ${day}`}
    </button>
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
