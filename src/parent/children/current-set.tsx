import { useSignal } from '@preact/signals';
import type { Draft } from '../../core/record/record';
import type { FactSet } from '../../core/set/fact-set';
import { counterpartOf } from '../../core/set/teaching-sets';
import { useActing } from '../acting';
import { Done } from '../parts/done';
import { Tick } from '../parts/tick';
import { Trouble } from '../parts/trouble';
import type { OneChildProps } from './name-and-edge';
import { coveredFacts, findSet, ownSets, proposedSet } from './set-list';
import { SetPicker } from './set-picker';
import { childrenWords } from './words';

/** What the child learns now, and what could follow. */
export function CurrentSet({ desk, child }: OneChildProps) {
  const acting = useActing();
  const { setOrder } = child.settings;
  const household = desk.household.value;
  const current = child.currentSet === null ? null : findSet(household, child.currentSet);
  const proposed = proposedSet(coveredFacts(household, child), setOrder);
  const counterpart = current && counterpartOf(current);
  const chosen = useSignal<FactSet | null>(proposed);
  const isKeeping = useSignal(true);

  function start(set: FactSet) {
    const drafts: Draft[] = [{ kind: 'setStarted', child: child.id, set: set.id }];
    if (current && isKeeping.value) {
      drafts.unshift({ kind: 'setKept', child: child.id, set: current.id, kept: true });
    }
    return acting.record(desk, drafts, childrenWords.begun(set.name));
  }

  return (
    <div data-holds=".kept">
      <h3>{childrenWords.currentSet}</h3>
      <p>
        {current
          ? childrenWords.learns(child.name, current.name, current.facts.length)
          : childrenWords.learnsNothing(child.name)}
      </p>
      {counterpart && <p class="hint">{childrenWords.counterpart(counterpart.name)}</p>}
      {proposed && proposed.id !== current?.id && <p class="hint">{childrenWords.proposed(proposed.name)}</p>}
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      <details class="no-print" open={!current}>
        <summary>{current ? childrenWords.choose : childrenWords.chooseFirst}</summary>
        <SetPicker
          legend={childrenWords.chosen}
          chosen={chosen.value}
          ticked={child.ticked}
          own={ownSets(household)}
          order={setOrder}
          onChoose={(set) => {
            chosen.value = set;
          }}
        />
        {current && (
          <Tick
            label={childrenWords.startAndKeep(current.name)}
            isOn={isKeeping.value}
            onTurn={(isOn) => {
              isKeeping.value = isOn;
            }}
          />
        )}
        <div class="actions">
          {chosen.value && chosen.value.id !== current?.id && (
            <button type="button" class="main" onClick={() => chosen.value && start(chosen.value)}>
              {childrenWords.start(chosen.value.name)}
            </button>
          )}
          {counterpart && (
            // A new button, since the same one would then stand for the way back under the finger.
            <button key={counterpart.id} type="button" onClick={() => start(counterpart)}>
              {childrenWords.startCounterpart(counterpart.name)}
            </button>
          )}
        </div>
      </details>
    </div>
  );
}
