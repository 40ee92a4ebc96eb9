import { useSignal } from '@preact/signals';
import type { Id } from '../../core/record/stamp';
import type { FactSet } from '../../core/set/fact-set';
import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import type { OneChildProps } from './name-and-edge';
import { ownSets, setName } from './set-list';
import { SetPicker } from './set-picker';
import { childrenWords } from './words';

/** Sets moved on from, which a share of every sheet comes from. */
export function KeptSets({ desk, child }: OneChildProps) {
  const acting = useActing();
  const chosen = useSignal<FactSet | null>(null);
  const household = desk.household.value;
  const keep = (set: Id, kept: boolean) =>
    acting.record(
      desk,
      [{ kind: 'setKept', child: child.id, set, kept }],
      kept ? childrenWords.isKept(setName(household, set)) : childrenWords.isLetGo(setName(household, set)),
    );

  return (
    <div data-holds=".kept">
      <h3>{childrenWords.keptSets}</h3>
      <p class="hint">{childrenWords.keptLead}</p>
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      {child.keptSets.length === 0 && <p>{childrenWords.noneKept}</p>}
      <ul class="bare">
        {child.keptSets.map((set) => (
          <li key={set}>
            {setName(household, set)}{' '}
            <button
              type="button"
              class="link no-print"
              aria-label={`${childrenWords.letGo}: ${setName(household, set)}`}
              onClick={() => keep(set, false)}
            >
              {childrenWords.letGo}
            </button>
          </li>
        ))}
      </ul>
      <details class="no-print">
        <summary>{childrenWords.keepMore}</summary>
        <SetPicker
          legend={childrenWords.chosen}
          chosen={chosen.value}
          ticked={child.ticked}
          own={ownSets(household)}
          order={child.settings.setOrder}
          onChoose={(set) => {
            chosen.value = set;
          }}
        />
        {chosen.value &&
          chosen.value.id !== child.currentSet &&
          !child.keptSets.includes(chosen.value.id) && (
            <div class="actions">
              <button type="button" onClick={() => chosen.value && keep(chosen.value.id, true)}>
                {childrenWords.startAndKeep(chosen.value.name)}
              </button>
            </div>
          )}
      </details>
    </div>
  );
}
