import type { Child } from '../../core/household/household';
import type { Desk } from '../../state/desk';
import { setName } from '../children/set-list';
import { Heading } from '../parts/heading';
import { turnTo } from '../place';
import { useRead } from '../reading/use-read';
import { nextSchoolDay } from './school-week';
import { type NewFact, type ToTeach, toTeachOn } from './to-teach';
import { mondayWords } from './words';

/** What to teach when school begins again: to whom, what and why. Made to be printed. */
export function MondayPage({ desk }: { readonly desk: Desk }) {
  const children = desk.household.value.children.filter(({ archived }) => !archived);
  const days = children.map(({ settings }) => nextSchoolDay(desk.today.value, settings.schoolDays));
  const first = days.toSorted()[0] ?? desk.today.value;
  return (
    <>
      <div class="actions no-print">
        <button type="button" class="quiet" onClick={() => turnTo('today')}>
          {mondayWords.back}
        </button>
        <button type="button" onClick={() => print()}>
          {mondayWords.print}
        </button>
      </div>
      <Heading>{mondayWords.titleFor(first)}</Heading>
      <p class="hint">{mondayWords.lead}</p>
      {children.map((child, index) => (
        <ChildMonday key={child.id} desk={desk} child={child} day={days[index] ?? first} />
      ))}
    </>
  );
}

interface ChildMondayProps {
  readonly desk: Desk;
  readonly child: Child;
  readonly day: string;
}

function ChildMonday({ desk, child, day }: ChildMondayProps) {
  const household = desk.household.value;
  const history = desk.history.value;
  const today = desk.today.value;
  const read = useRead(
    () => (history ? toTeachOn(day, { household, history, child, today }) : null),
    [household, history, child, day, today],
  );
  return (
    <section class="card" aria-label={child.name}>
      <h2>{child.name}</h2>
      {!read && <p role="status">{mondayWords.reading}</p>}
      {read && !read.hasSet && <p>{mondayWords.noSet}</p>}
      {read?.hasSet && (
        <>
          <p>{mondayWords.set(setName(household, child.currentSet))}</p>
          <Teaching {...read} />
        </>
      )}
      {read && <Open {...read} />}
    </section>
  );
}

function Teaching({ untried, isLookBack, fresh, hasCards }: ToTeach) {
  const isPlain = !isLookBack && untried === 0 && fresh.length === 0;
  return (
    <>
      {isLookBack && <p>{mondayWords.lookBack}</p>}
      {untried > 0 && <p>{mondayWords.firstTry(untried)}</p>}
      {fresh.length > 0 && <NewFacts facts={fresh} isAfter={isLookBack} />}
      {isPlain && <p>{hasCards ? mondayWords.nothingNew : mondayWords.cardsOff}</p>}
    </>
  );
}

interface NewFactsProps {
  readonly facts: readonly NewFact[];
  /** They come the day after a look-back. */
  readonly isAfter: boolean;
}

function NewFacts({ facts, isAfter }: NewFactsProps) {
  const { how } = mondayWords;
  return (
    <>
      <h3>{isAfter ? mondayWords.freshAfter(facts.length) : mondayWords.fresh(facts.length)}</h3>
      <p class="hint">{mondayWords.freshWhy}</p>
      <table class="plain stacks">
        <thead>
          <tr>
            <th scope="col">{how.fact}</th>
            <th scope="col">{how.line}</th>
            <th scope="col">{how.work}</th>
          </tr>
        </thead>
        <tbody>
          {facts.map(({ fact, whole, line, isOwn, work }) => (
            <tr key={fact}>
              <th scope="row">{whole}</th>
              <td class="wraps" data-label={how.line}>
                {line ?? mondayWords.none}
                {isOwn && ` (${mondayWords.own})`}
              </td>
              <td data-label={how.work}>{work || '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** What was missed and what has faded. */
function Open({ missed, faded }: ToTeach) {
  const { list, missedFact, fadedFact } = mondayWords;
  return (
    <>
      <h3>{mondayWords.missed}</h3>
      {missed.length === 0 ? (
        <p>{mondayWords.missedNone}</p>
      ) : (
        <>
          <p>{list(missed.map(({ fact, times }) => missedFact(fact, times)))}</p>
          <p class="hint">{mondayWords.missedWhy}</p>
        </>
      )}
      <h3>{mondayWords.faded}</h3>
      {faded.length === 0 ? (
        <p>{mondayWords.fadedNone}</p>
      ) : (
        <>
          <p>{list(faded.map(({ fact, days }) => fadedFact(fact, days)))}</p>
          <p class="hint">{mondayWords.fadedWhy}</p>
        </>
      )}
    </>
  );
}
