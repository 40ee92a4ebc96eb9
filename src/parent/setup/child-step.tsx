import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { readChildName } from '../children/child-name';
import { EdgeChoice } from '../children/edge-choice';
import { draft, dropDraft } from '../drafts';
import { Field } from '../parts/field';
import { Heading } from '../parts/heading';
import { Trouble } from '../parts/trouble';
import { setupStep } from './progress';
import { nameFaults, setupWords } from './words';

const nameDraft = 'setup-child-name';

/** A child's name and woven edge. */
export function ChildStep({ desk }: { readonly desk: Desk }) {
  const name = draft(nameDraft);
  const fault = useSignal<string | null>(null);
  const edge = useSignal(desk.household.value.children.length);
  const { act, isBusy, trouble } = useActing();

  async function goOn(event: Event) {
    event.preventDefault();
    const reading = readChildName(name.value, desk.household.value.children, null);
    fault.value = reading.ok ? null : nameFaults[reading.fault];
    if (!reading.ok) return;
    const child = desk.newId();
    const isAdded = await act(() =>
      desk.record([{ kind: 'childAdded', child, name: reading.name, edge: edge.value }]),
    );
    if (!isAdded) return;
    dropDraft(nameDraft);
    setupStep.value = { at: 'known', child, marked: new Set() };
  }

  return (
    <form onSubmit={goOn} noValidate>
      <Heading>{setupWords.steps.child}</Heading>
      <p>{setupWords.childLead}</p>
      <Field label={setupWords.childName} value={name} fault={fault.value} wide />
      <EdgeChoice edge={edge} name={name.value} />
      <Trouble sentence={trouble} />
      <div class="actions">
        <button type="submit" class="main" aria-disabled={isBusy.value}>
          {setupWords.goOn}
        </button>
      </div>
    </form>
  );
}
