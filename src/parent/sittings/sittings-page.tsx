import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { nameOf } from '../children/name-of';
import { setName } from '../children/set-list';
import { bookOf, type Entry } from '../marking/book-of';
import { sittingName } from '../marking/words';
import { ChildFilter, filteredChild } from '../parts/child-filter';
import { Heading } from '../parts/heading';
import { shortDay, spanText } from '../parts/when';
import { turnTo } from '../place';
import { insideWords } from '../words';
import { sittingsWords } from './words';

const pageful = 50;

/** Every sitting, newest first, of everyone or of one child. */
export function SittingsPage({ desk }: { readonly desk: Desk }) {
  const shown = useSignal(pageful);
  const household = desk.household.value;
  const history = desk.history.value;
  if (!history) {
    return (
      <>
        <Heading>{sittingsWords.title}</Heading>
        <p role="status">{insideWords.historyLoading}</p>
      </>
    );
  }
  const entries = bookOf(household, history, filteredChild(household));
  const onPage = entries.slice(0, shown.value);
  const { columns } = sittingsWords;
  return (
    <>
      <Heading>{sittingsWords.title}</Heading>
      <ChildFilter household={household} page="sittings" />
      <p>
        {entries.length === 0 ? sittingsWords.none : sittingsWords.summary(onPage.length, entries.length)}
      </p>
      {onPage.some(({ sat }) => sat.clock !== null) && <p class="hint">{sittingsWords.byBellMeans}</p>}
      {onPage.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard
        <section class="table-frame" tabIndex={0} aria-label={sittingsWords.title}>
          <table class="plain stacks">
            <thead>
              <tr>
                <th scope="col">{columns.day}</th>
                <th scope="col">{columns.child}</th>
                <th scope="col">{columns.what}</th>
                <th scope="col">{columns.set}</th>
                <th scope="col">{columns.way}</th>
                <th scope="col">{columns.count}</th>
                <th scope="col">{columns.band}</th>
                <th scope="col">{columns.minutes}</th>
              </tr>
            </thead>
            <tbody>
              {onPage.map((entry) => (
                <SittingRow key={entry.sat.id} desk={desk} entry={entry} />
              ))}
            </tbody>
          </table>
        </section>
      )}
      {entries.length > shown.value && (
        <button
          type="button"
          onClick={() => {
            shown.value += pageful;
          }}
        >
          {sittingsWords.older}
        </button>
      )}
    </>
  );
}

function SittingRow({ desk, entry }: { readonly desk: Desk; readonly entry: Entry }) {
  const { sat, marked, child, rulings } = entry;
  const { columns } = sittingsWords;
  const household = desk.household.value;
  const of = sat.prompts.length;
  const band = marked.band ? household.settings.bandNames[marked.band] : sittingsWords.noBand;
  return (
    <tr>
      <td data-label={columns.day}>{shortDay(sat.day)}</td>
      <td data-label={columns.child}>{nameOf(household, child)}</td>
      <th scope="row">
        <button type="button" class="link" onClick={() => turnTo('marking', { sitting: sat.id })}>
          {sittingName(sat)}
        </button>
        {sat.second ? sittingsWords.second : ''}
      </th>
      <td data-label={columns.set}>
        {sat.set === null
          ? sat.spread
            ? sittingsWords.spread
            : sittingsWords.noSet
          : setName(household, sat.set)}
      </td>
      <td data-label={columns.way}>
        {sat.clock
          ? sittingsWords.clock(sat.clock.allowanceMs / 1000, sat.clock.sight === 'hidden')
          : sittingsWords.noClock}
      </td>
      <td data-label={columns.count}>
        {sat.clock ? sittingsWords.byBell(marked.rightByBell, of) : sittingsWords.right(marked.right, of)}
      </td>
      <td data-label={columns.band}>{rulings.voided ? sittingsWords.voided : band}</td>
      <td data-label={columns.minutes}>{sat.endedMs === null ? '–' : spanText(sat.endedMs)}</td>
    </tr>
  );
}
