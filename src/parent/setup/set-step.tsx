import { useSignal } from '@preact/signals';
import type { Id } from '../../core/record/stamp';
import type { FactSet } from '../../core/set/fact-set';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { findChild, nameOf } from '../children/name-of';
import { ownSets, proposedSet } from '../children/set-list';
import { SetPicker } from '../children/set-picker';
import { Heading } from '../parts/heading';
import { Trouble } from '../parts/trouble';
import { setupStep } from './progress';
import { setupWords } from './words';

export interface SetStepProps {
  readonly desk: Desk;
  readonly child: Id;
}

/** The first set: proposed from what was ticked, or any other. */
export function SetStep({ desk, child }: SetStepProps) {
  const household = desk.household.value;
  const ticked = findChild(household, child)?.ticked ?? new Set();
  const proposed = proposedSet(ticked);
  const chosen = useSignal<FactSet | null>(proposed);
  const { act, isBusy, trouble } = useActing();

  async function start() {
    const set = chosen.value?.id;
    if (!set) return;
    if (await act(() => desk.record([{ kind: 'setStarted', child, set }]))) {
      setupStep.value = { at: 'done', child };
    }
  }

  return (
    <>
      <Heading>{setupWords.steps.set}</Heading>
      <p>{setupWords.setLead(nameOf(household, child))}</p>
      <p class="hint">{proposed ? setupWords.proposed(proposed.name) : setupWords.noneLeft}</p>
      <SetPicker
        legend={setupWords.set}
        chosen={chosen.value}
        ticked={ticked}
        own={ownSets(household)}
        onChoose={(set) => {
          chosen.value = set;
        }}
      />
      <Trouble sentence={trouble} />
      <div class="actions">
        <button type="button" class="main" aria-disabled={isBusy.value || !chosen.value} onClick={start}>
          {setupWords.startSet(chosen.value?.name ?? null)}
        </button>
      </div>
    </>
  );
}
