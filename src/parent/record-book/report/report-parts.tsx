import { format, parseISO } from 'date-fns';
import { type Fact, parseFact } from '../../../core/fact/fact';
import { operations } from '../../../core/fact/fact-list';
import type { Child, Household } from '../../../core/household/household';
import type { FactReading, FactState } from '../../../readings/facts/fact-reading';
import { setName } from '../../children/set-list';
import { operationNames } from '../../fact-grid/words';
import type { Entry } from '../../marking/book-of';
import { promptText, sittingName } from '../../marking/words';
import { longDay } from '../../parts/when';
import { listed } from '../../words';
import type { Term } from './term';
import { reportWords } from './words';

/** Days, minutes and counts of each month. */
export function Months({ months }: Pick<Term, 'months'>) {
  const { columns } = reportWords;
  return (
    <section>
      <h2>{reportWords.monthsTitle}</h2>
      <table class="plain report-table">
        <thead>
          <tr>
            {Object.values(columns).map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {months.map(({ month, work }) => (
            <tr key={month}>
              <th scope="row">{format(parseISO(month), 'MMMM yyyy')}</th>
              <td>{work.days}</td>
              <td>{work.minutes === 0 ? '–' : work.minutes}</td>
              <td>{work.sheets}</td>
              <td>{work.answers}</td>
              <td>{work.right}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export interface SetsProps {
  readonly household: Household;
  readonly child: Child;
  /** Ids of sets begun and moved on from in these days. */
  readonly begun: readonly string[];
  readonly kept: readonly string[];
}

/** Sets begun and kept in these days, and the one being learned. */
export function Sets({ household, child, begun, kept }: SetsProps) {
  const names = (sets: readonly string[]) => listed(sets.map((set) => `“${setName(household, set)}”`));
  return (
    <section>
      <h2>{reportWords.setsTitle}</h2>
      {begun.length > 0 && <p>{reportWords.begun(names(begun))}</p>}
      {kept.length > 0 && <p>{reportWords.kept(names(kept))}</p>}
      {begun.length + kept.length === 0 && <p>{reportWords.noSets}</p>}
      {child.currentSet !== null && <p>{reportWords.now(setName(household, child.currentSet))}</p>}
    </section>
  );
}

const states: readonly FactState[] = ['quick', 'slow', 'uneven', 'toLearn', 'notEnough'];

/** How many facts of each operation are known, and how. */
export function KnownNow({ readings }: { readonly readings: readonly FactReading[] }) {
  const { known } = reportWords;
  const rows = operations
    .map((op) => ({ op, own: readings.filter(({ fact }: { readonly fact: Fact }) => fact.op === op) }))
    .filter(({ own }) => own.length > 0);
  return (
    <section>
      <h2>{reportWords.knownTitle}</h2>
      {rows.length === 0 ? (
        <p>{reportWords.knownNothing}</p>
      ) : (
        <table class="plain report-table">
          <thead>
            <tr>
              <th scope="col">{known.fact}</th>
              {states.map((state) => (
                <th key={state} scope="col">
                  {known[state]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ op, own }) => (
              <tr key={op}>
                <th scope="row">{operationNames[op]}</th>
                {states.map((state) => (
                  <td key={state}>{own.filter((reading) => reading.state === state).length || '–'}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p class="hint">{reportWords.knownMeans}</p>
    </section>
  );
}

/** Sheets as they were answered. */
export function Samples({ household, samples }: { readonly household: Household } & Pick<Term, 'samples'>) {
  if (samples.length === 0) return null;
  return (
    <section>
      <h2>{reportWords.samplesTitle}</h2>
      <p class="hint">{reportWords.samplesMean}</p>
      {samples.map((entry) => (
        <section key={entry.sat.id} class="report-sample">
          <h3>{titleOf(entry, household)}</h3>
          <ol>
            {entry.marked.places.map((place) => (
              <li key={place.place}>
                {promptText(place.prompt)}
                {parseFact(place.prompt) ? ' = ' : ' '}
                {answerOf(place)}
              </li>
            ))}
          </ol>
        </section>
      ))}
    </section>
  );
}

function titleOf({ sat }: Entry, household: Household): string {
  const set = sat.set === null ? null : setName(household, sat.set);
  return reportWords.sample(sittingName(sat), longDay(sat.day), set);
}

function answerOf({ given, outcome, answer }: Entry['marked']['places'][number]) {
  if (outcome === 'right') return <b>{given ?? answer}</b>;
  if (outcome === 'wrong') return <s>{given ?? '?'}</s>;
  return <i>{outcome === 'notReached' ? reportWords.notReached : reportWords.blank}</i>;
}
