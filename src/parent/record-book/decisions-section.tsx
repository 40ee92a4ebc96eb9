import { useSignal } from '@preact/signals';
import { format } from 'date-fns';
import { useEffect } from 'preact/hooks';
import type { Decision } from '../../state/record-book/record-book';
import { useActing } from '../acting';
import { Opened } from '../parts/opened';
import { Trouble } from '../parts/trouble';
import { troubleSentence } from '../trouble-words';
import type { BookProps } from './backup-section';
import { decisionSaid } from './decision-says';
import { namesFor } from './names-for';
import { decisionWords } from './words';

const pageful = 40;

/** Every decision, the newest first, each to be taken back and put back. */
export function DecisionsSection({ desk, book }: BookProps) {
  return (
    <section aria-label={decisionWords.title} class="no-print">
      <h2>{decisionWords.title}</h2>
      <p>{decisionWords.lead}</p>
      <Opened title={decisionWords.open}>{() => <Decisions desk={desk} book={book} />}</Opened>
    </section>
  );
}

function Decisions({ desk, book }: BookProps) {
  const household = desk.household.value;
  const decisions = useSignal<readonly Decision[] | null>(null);
  const shown = useSignal(pageful);
  const says = useSignal<string | null>(null);
  const failed = useSignal<string | null>(null);
  const { act, trouble } = useActing();

  // Read again whenever anything was decided, here or in another tab.
  useEffect(() => {
    let isCurrent = true;
    book.decisions().then(
      (read) => {
        if (isCurrent) decisions.value = read;
      },
      (error: unknown) => {
        failed.value = troubleSentence(error);
      },
    );
    return () => {
      isCurrent = false;
    };
  }, [book, household]);

  const all = decisions.value;
  if (all === null) return <p role="status">{failed.value ?? decisionWords.reading}</p>;
  const names = namesFor(household, desk.history.value, all);

  function turn(record: Decision) {
    const isUndone = household.isUndone(record);
    // Two devices may each have taken it back; all of that has to go for it to hold again.
    const targets = isUndone ? household.undoneBy(record.id) : [record.id];
    return act(async () => {
      for (const target of targets) await desk.undo(target);
      says.value = isUndone ? decisionWords.isBack : decisionWords.takenBack;
    });
  }

  return (
    <div data-holds=".decided-said">
      <p class="kept decided-said" role="status" tabIndex={-1}>
        {says.value}
      </p>
      <Trouble sentence={trouble} />
      {all.length === 0 && <p>{decisionWords.none}</p>}
      <ul class="bare decided" data-holds="button">
        {all.slice(0, shown.value).map((record) => {
          const text = decisionSaid(record, names);
          const isUndone = household.isUndone(record);
          const word = isUndone ? decisionWords.putBack : decisionWords.takeBack;
          return (
            <li key={record.id}>
              <time class="hint" dateTime={new Date(record.at).toISOString()}>
                {format(record.at, 'd MMM yyyy, HH:mm')}
              </time>{' '}
              <bdi>{isUndone ? <s>{text}</s> : text}</bdi> {isUndone && `(${decisionWords.wasTaken}) `}
              {canTurn(record) && (
                <button
                  type="button"
                  class="link"
                  aria-label={decisionWords.aria(word, text)}
                  onClick={() => turn(record)}
                >
                  {word}
                </button>
              )}
            </li>
          );
        })}
      </ul>
      {all.length > shown.value && (
        <button
          type="button"
          onClick={() => {
            shown.value += pageful;
          }}
        >
          {decisionWords.older}
        </button>
      )}
    </div>
  );
}

/** A deletion holds for good; an undoing is turned at what it took back. */
function canTurn({ kind }: Decision): boolean {
  return kind !== 'childDeleted' && kind !== 'undone';
}
