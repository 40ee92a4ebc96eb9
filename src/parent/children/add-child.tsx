import { useSignal } from '@preact/signals';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { draft, dropDraft } from '../drafts';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { turnTo } from '../place';
import { nameFaults } from '../setup/words';
import { readChildName } from './child-name';
import { EdgeChoice } from './edge-choice';
import { childrenWords } from './words';

const nameDraft = 'new-child-name';

export interface AddChildProps {
  readonly desk: Desk;
  /** The name of the child added, or `null` when it was left. */
  readonly onDone: (name: string | null) => void;
}

/** Another child. */
export function AddChild({ desk, onDone }: AddChildProps) {
  const name = draft(nameDraft);
  const fault = useSignal<string | null>(null);
  const edge = useSignal(desk.household.value.children.length);
  const { act, isBusy, trouble } = useActing();

  async function add(event: Event) {
    event.preventDefault();
    const reading = readChildName(name.value, desk.household.value.children, null);
    fault.value = reading.ok ? null : nameFaults[reading.fault];
    if (!reading.ok) return;
    const child = desk.newId();
    if (
      !(await act(() => desk.record([{ kind: 'childAdded', child, name: reading.name, edge: edge.value }])))
    ) {
      return;
    }
    dropDraft(nameDraft);
    turnTo('children', { child });
    onDone(reading.name);
  }

  return (
    <form class="card" onSubmit={add} noValidate>
      <h2>{childrenWords.add}</h2>
      <Field label={childrenWords.name} value={name} fault={fault.value} wide />
      <EdgeChoice edge={edge} name={name.value} />
      <Trouble sentence={trouble} />
      <div class="actions">
        <button type="submit" class="main" aria-disabled={isBusy.value}>
          {childrenWords.addHere}
        </button>
        <button type="button" class="quiet" onClick={() => onDone(null)}>
          {childrenWords.cancel}
        </button>
      </div>
    </form>
  );
}
