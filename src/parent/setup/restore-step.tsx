import type { Desk } from '../../state/desk';
import type { Gate } from '../../state/gate';
import { Heading } from '../parts/heading';
import { BringIn } from '../record-book/bring-in';
import { useRecordBook } from '../record-book/use-record-book';
import { bookWords } from '../record-book/words';
import { setupStep } from './progress';
import { setupWords } from './words';

export interface RestoreStepProps {
  readonly desk: Desk;
  readonly gate: Gate;
}

/** A file brought into an empty device; a PIN is chosen next where there is none. */
export function RestoreStep({ desk, gate }: RestoreStepProps) {
  const book = useRecordBook(desk).value;
  const isNew = gate.phase.value === 'unset';

  function goOn() {
    const hasChildren = desk.household.value.children.length > 0;
    if (isNew) setupStep.value = { at: 'pin' };
    else setupStep.value = hasChildren ? null : { at: 'child' };
  }

  return (
    <>
      <Heading>{setupWords.steps.restore}</Heading>
      <p>{setupWords.restoreLead}</p>
      {book === 'failed' && <p class="trouble">{bookWords.notFetched}</p>}
      {book && book !== 'failed' && <BringIn book={book} onDone={goOn} />}
      <div class="actions">
        <button
          type="button"
          class="quiet"
          onClick={() => {
            setupStep.value = isNew ? { at: 'storage' } : { at: 'child' };
          }}
        >
          {setupWords.withoutFile}
        </button>
      </div>
    </>
  );
}
