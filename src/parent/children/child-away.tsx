import { useSignal } from '@preact/signals';
import { useActing } from '../acting';
import { Field } from '../parts/field';
import { Trouble } from '../parts/trouble';
import { turnTo } from '../place';
import { MakeBackup } from '../record-book/make-backup';
import { useRecordBook } from '../record-book/use-record-book';
import type { OneChildProps } from './name-and-edge';
import { childrenWords } from './words';

/** Archiving, which keeps everything; deleting, which keeps nothing, offers a backup, and is asked twice. */
export function ChildAway({ desk, child }: OneChildProps) {
  const { act, trouble } = useActing();
  const isDeleting = useSignal(false);

  function archive(archived: boolean) {
    // Without this the page would turn to another child under the parent's hand.
    turnTo('children', { child: child.id });
    return act(() => desk.record([{ kind: 'childChanged', child: child.id, archived }]));
  }

  return (
    <details class="no-print" open={child.archived} data-holds="summary">
      <summary>{childrenWords.away}</summary>
      <Trouble sentence={trouble} />
      <p>{childrenWords.archiveLead}</p>
      <div class="actions">
        <button type="button" onClick={() => archive(!child.archived)}>
          {child.archived ? childrenWords.bringBack(child.name) : childrenWords.archive(child.name)}
        </button>
        {!isDeleting.value && (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              isDeleting.value = true;
            }}
          >
            {childrenWords.deleteFirst(child.name)}
          </button>
        )}
      </div>
      {isDeleting.value && (
        <DeleteChild
          desk={desk}
          child={child}
          onLeave={() => {
            isDeleting.value = false;
          }}
        />
      )}
    </details>
  );
}

/** A backup, the name typed, and one more question. */
function DeleteChild({ desk, child, onLeave }: OneChildProps & { readonly onLeave: () => void }) {
  const { act, isBusy, trouble } = useActing();
  const book = useRecordBook(desk).value;
  const typed = useSignal('');
  const fault = useSignal<string | null>(null);
  const isAsked = useSignal(false);
  const sittings = desk.history.value?.children.get(child.id)?.sittings.length ?? 0;

  function ask(event: Event) {
    event.preventDefault();
    const isSame = typed.value.trim() === child.name.trim();
    fault.value = isSame ? null : childrenWords.deleteMismatch(child.name);
    isAsked.value = isSame;
  }

  return (
    <div class="card" data-holds="button">
      <p>{childrenWords.deleteLead(child.name)}</p>
      {book && book !== 'failed' && <MakeBackup book={book} isMain={false} />}
      {isAsked.value ? (
        <>
          <p role="alert">{childrenWords.deleteAgain(child.name, sittings)}</p>
          <div class="actions">
            <button type="button" onClick={onLeave}>
              {childrenWords.deleteNot(child.name)}
            </button>
            <button
              type="button"
              aria-disabled={isBusy.value}
              onClick={() => act(() => desk.deleteChild(child.id))}
            >
              {childrenWords.delete(child.name)}
            </button>
          </div>
        </>
      ) : (
        <form onSubmit={ask} noValidate>
          <Field label={childrenWords.deleteName} value={typed} fault={fault.value} wide />
          <div class="actions">
            <button type="submit">{childrenWords.goOn}</button>
            <button type="button" class="quiet" onClick={onLeave}>
              {childrenWords.cancel}
            </button>
          </div>
        </form>
      )}
      <Trouble sentence={trouble} />
    </div>
  );
}
