import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import { findChild, nameOf } from '../children/name-of';
import { setName } from '../children/set-list';
import { Heading } from '../parts/heading';
import { setupStep } from './progress';
import { setupWords } from './words';

export interface DoneStepProps {
  readonly desk: Desk;
  readonly child: Id;
}

/** What happens next, and the device into the child's hands. */
export function DoneStep({ desk, child }: DoneStepProps) {
  const household = desk.household.value;
  const name = nameOf(household, child);
  return (
    <>
      <Heading>{setupWords.doneTitle(name)}</Heading>
      <p>{setupWords.doneLead(name, setName(household, findChild(household, child)?.currentSet ?? null))}</p>
      <p>{setupWords.clockLater}</p>
      <div class="actions">
        <button
          type="button"
          class="main"
          onClick={() => {
            setupStep.value = null;
            desk.handOver(child);
          }}
        >
          {setupWords.handOver(name)}
        </button>
        <button
          type="button"
          onClick={() => {
            setupStep.value = { at: 'child' };
          }}
        >
          {setupWords.another}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            setupStep.value = null;
          }}
        >
          {setupWords.pages}
        </button>
      </div>
    </>
  );
}
