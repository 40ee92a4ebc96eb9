import { useSignal } from '@preact/signals';
import type { Child } from '../../core/household/household';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { draft, dropDraft } from '../drafts';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { useFaultFocus } from '../parts/use-fault-focus';
import { nameFaults } from '../setup/words';
import { readChildName } from './child-name';
import { EdgeChoice } from './edge-choice';
import { childrenWords } from './words';

export interface OneChildProps {
  readonly desk: Desk;
  readonly child: Child;
}

/** A child's name and edge, to be changed. */
export function NameAndEdge({ desk, child }: OneChildProps) {
  const nameDraft = `child-name-${child.id}`;
  const name = draft(nameDraft, child.name);
  const edge = useSignal(child.edge);
  const fault = useSignal<string | null>(null);
  const said = useSignal<string | null>(null);
  const { form, lookAtFault } = useFaultFocus();
  const { act, trouble } = useActing();

  async function keep(event: Event) {
    event.preventDefault();
    const reading = readChildName(name.value, desk.household.value.children, child.id);
    fault.value = reading.ok ? null : nameFaults[reading.fault];
    said.value = null;
    if (!reading.ok) return lookAtFault();
    const isKept = await act(() =>
      desk.record([{ kind: 'childChanged', child: child.id, name: reading.name, edge: edge.value }]),
    );
    if (!isKept) return;
    dropDraft(nameDraft);
    said.value = childrenWords.kept;
  }

  return (
    <details>
      <summary>{childrenWords.nameAndEdge}</summary>
      <form ref={form} onSubmit={keep} noValidate>
        <Field label={childrenWords.name} value={name} fault={fault.value} wide />
        <EdgeChoice edge={edge} name={child.name} />
        <Trouble sentence={trouble} />
        <p class="kept" role="status">
          {said}
        </p>
        <div class="actions">
          <button type="submit">{childrenWords.keep}</button>
        </div>
      </form>
    </details>
  );
}
