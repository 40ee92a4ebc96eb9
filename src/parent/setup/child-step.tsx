import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { readChildName } from '../children/child-name';
import { EdgeChoice } from '../children/edge-choice';
import { Field } from '../parts/field';
import { Heading } from '../parts/heading';
import { useFaultFocus } from '../parts/use-fault-focus';
import { newChild } from './new-child';
import { setupStep } from './progress';
import { nameFaults, setupWords } from './words';

/** A child's name and woven edge. Nothing of a child is recorded before its last step. */
export function ChildStep({ desk }: { readonly desk: Desk }) {
  const fault = useSignal<string | null>(null);
  const { form, lookAtFault } = useFaultFocus();
  const isAnother = newChild.isAnother.value;

  function goOn(event: Event) {
    event.preventDefault();
    const reading = readChildName(newChild.name.value, desk.household.value.children, null);
    fault.value = reading.ok ? null : nameFaults[reading.fault];
    if (!reading.ok) return lookAtFault();
    newChild.name.value = reading.name;
    setupStep.value = { at: 'known' };
  }

  function leave() {
    if (!isAnother) return desk.lock();
    setupStep.value = null;
  }

  return (
    <form ref={form} onSubmit={goOn} noValidate>
      <Heading>{setupWords.steps.child}</Heading>
      <p>{setupWords.childLead}</p>
      <Field label={setupWords.childName} value={newChild.name} fault={fault.value} wide />
      <EdgeChoice edge={newChild.edge} name={newChild.name.value} />
      <div class="actions">
        <button type="submit" class="main">
          {setupWords.goOn}
        </button>
        <button type="button" class="quiet" onClick={leave}>
          {isAnother ? setupWords.cancel : setupWords.later}
        </button>
      </div>
    </form>
  );
}
