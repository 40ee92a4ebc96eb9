import { signal } from '@preact/signals';
import type { OwnSet } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import { OwnSetForm } from './own-set-form';
import { childrenWords } from './words';

/** The own set being made or changed; outside the page, so that a lock loses no picking. */
const editing = signal<{ readonly id: Id; readonly set: OwnSet | null } | null>(null);

/** The parent's own sets. */
export function OwnSets({ desk }: { readonly desk: Desk }) {
  const acting = useActing();
  const { ownSets, removedSets } = desk.household.value;
  const at = editing.value;

  const put = ({ id, name, facts }: OwnSet, removed: boolean) =>
    acting.record(
      desk,
      [{ kind: 'setMade', set: id, name, facts, removed }],
      removed ? childrenWords.isRemoved(name) : childrenWords.isRestored(name),
    );

  return (
    <section data-holds="form input[type=text],.kept">
      <h2>{childrenWords.ownSets}</h2>
      <p class="hint">{childrenWords.ownLead}</p>
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      {ownSets.length === 0 && <p>{childrenWords.noOwn}</p>}
      <ul class="bare">
        {ownSets.map((set) => (
          <li key={set.id}>
            {set.name} <span class="hint">{childrenWords.factCount(set.facts.length)}</span>{' '}
            <button
              type="button"
              class="link no-print"
              aria-label={`${childrenWords.editOwn}: ${set.name}`}
              onClick={() => {
                editing.value = { id: set.id, set };
              }}
            >
              {childrenWords.editOwn}
            </button>{' '}
            <button
              type="button"
              class="link no-print"
              aria-label={`${childrenWords.removeOwn}: ${set.name}`}
              onClick={() => put(set, true)}
            >
              {childrenWords.removeOwn}
            </button>
          </li>
        ))}
      </ul>
      {removedSets.length > 0 && (
        <details class="no-print">
          <summary>{childrenWords.removedOwn}</summary>
          <ul class="bare">
            {removedSets.map((set) => (
              <li key={set.id}>
                {set.name}{' '}
                <button
                  type="button"
                  class="link"
                  aria-label={`${childrenWords.restoreOwn}: ${set.name}`}
                  onClick={() => put(set, false)}
                >
                  {childrenWords.restoreOwn}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {at ? (
        <OwnSetForm
          key={at.id}
          desk={desk}
          id={at.id}
          before={at.set}
          onDone={() => {
            editing.value = null;
          }}
        />
      ) : (
        <div class="actions no-print">
          <button
            type="button"
            class="make"
            onClick={() => {
              editing.value = { id: desk.newId(), set: null };
            }}
          >
            {childrenWords.makeOwn}
          </button>
        </div>
      )}
    </section>
  );
}
