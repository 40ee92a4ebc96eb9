import { useSignal } from '@preact/signals';
import { useActing } from '../acting';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { turnTo } from '../place';
import type { OneChildProps } from './name-and-edge';
import { childrenWords } from './words';

/** Archiving, which keeps everything; deleting, which keeps nothing and asks for the name. */
export function ChildAway({ desk, child }: OneChildProps) {
  const { act, trouble } = useActing();
  const typed = useSignal('');
  const fault = useSignal<string | null>(null);

  async function deleteForGood(event: Event) {
    event.preventDefault();
    fault.value = typed.value.trim() === child.name ? null : childrenWords.deleteMismatch(child.name);
    if (fault.value === null) await act(() => desk.deleteChild(child.id));
  }

  function archive(archived: boolean) {
    // Without this the page would turn to another child under the parent's hand.
    turnTo('children', { child: child.id });
    return act(() => desk.record([{ kind: 'childChanged', child: child.id, archived }]));
  }

  return (
    <details class="no-print" open={child.archived}>
      <summary>{childrenWords.away}</summary>
      <Trouble sentence={trouble} />
      <p>{childrenWords.archiveLead}</p>
      <div class="actions">
        <button type="button" onClick={() => archive(!child.archived)}>
          {child.archived ? childrenWords.bringBack(child.name) : childrenWords.archive(child.name)}
        </button>
      </div>
      <form onSubmit={deleteForGood} noValidate>
        <p>{childrenWords.deleteLead(child.name)}</p>
        <Field label={childrenWords.deleteName} value={typed} fault={fault.value} wide />
        <div class="actions">
          <button type="submit">{childrenWords.delete(child.name)}</button>
        </div>
      </form>
    </details>
  );
}
