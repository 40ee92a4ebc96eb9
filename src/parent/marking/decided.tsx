import type { RulingEntry } from '../../core/household/household';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { nameOf } from '../children/name-of';
import type { Entry } from './book-of';
import { markingWords, rulingText } from './words';

export interface DecidedProps {
  readonly desk: Desk;
  readonly entry: Entry;
  readonly acting: Acting;
}

/** What the parent has decided of a sitting, newest first, each to be undone and redone. */
export function Decided({ desk, entry, acting }: DecidedProps) {
  const household = desk.household.value;
  const entries = household.rulings.filter(({ record }) => record.target === entry.sat.id).toReversed();
  if (entries.length === 0) return null;

  function turn({ active, record, undoneBy }: RulingEntry) {
    // Two devices may each have undone it; all of the undoings have to go for it to hold again.
    const targets = active ? [record.id] : undoneBy;
    return acting.act(async () => {
      for (const target of targets) await desk.undo(target);
    });
  }

  return (
    <section>
      <h2>{markingWords.decided}</h2>
      <ul class="bare decided">
        {entries.map((one) => {
          const text = rulingText(one.record.ruling, entry.sat.prompts, (id) => nameOf(household, id));
          const word = one.active ? markingWords.undo : markingWords.redo;
          return (
            <li key={one.record.id}>
              {one.active ? text : <s>{text}</s>} {one.active ? '' : `(${markingWords.undone}) `}
              <button
                type="button"
                class={one.active ? 'link undo no-print' : 'link no-print'}
                aria-label={`${word}: ${text}`}
                onClick={() => turn(one)}
              >
                {word}
              </button>
            </li>
          );
        })}
      </ul>
      <p class="hint">{markingWords.hint}</p>
    </section>
  );
}
