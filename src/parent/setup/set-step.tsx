import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { ownSets, proposedSet } from '../children/set-list';
import { SetPicker } from '../children/set-picker';
import { Heading } from '../parts/heading';
import { Trouble } from '../parts/trouble';
import { newChild } from './new-child';
import { setupStep } from './progress';
import { useRecordChild } from './use-record-child';
import { setupWords } from './words';

/** The first set: proposed from what was ticked, or any other. */
export function SetStep({ desk }: { readonly desk: Desk }) {
  const acting = useActing();
  const recordChild = useRecordChild(desk, acting);
  const ticked = newChild.marked.value;
  const proposed = proposedSet(ticked);
  const chosen = newChild.set.value ?? proposed;

  return (
    <>
      <Heading>{setupWords.steps.set}</Heading>
      <p>{setupWords.setLead(newChild.name.value)}</p>
      <p class="hint">{proposed ? setupWords.proposed(proposed.name) : setupWords.noneLeft}</p>
      <SetPicker
        legend={setupWords.set}
        chosen={chosen}
        ticked={ticked}
        own={ownSets(desk.household.value)}
        onChoose={(set) => {
          newChild.set.value = set;
        }}
      />
      <Trouble sentence={acting.trouble} />
      <div class="actions">
        <button
          type="button"
          class="main"
          aria-disabled={acting.isBusy.value || !chosen}
          onClick={() => chosen && recordChild(chosen.id)}
        >
          {setupWords.startSet(chosen?.name ?? null)}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            setupStep.value = { at: 'known' };
          }}
        >
          {setupWords.back}
        </button>
      </div>
    </>
  );
}
