import type { FactId } from '../../core/fact/fact';
import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { nameOf } from '../children/name-of';
import { FactPicker } from '../fact-grid/fact-picker';
import { knownWords } from '../fact-grid/words';
import { Heading } from '../parts/heading';
import { Trouble } from '../parts/trouble';
import { setupStep } from './progress';
import { setupWords } from './words';

export interface KnownStepProps {
  readonly desk: Desk;
  readonly child: Id;
  readonly marked: ReadonlySet<FactId>;
}

/** What the child answers without working it out, on the fact grid. */
export function KnownStep({ desk, child, marked }: KnownStepProps) {
  const { act, isBusy, trouble } = useActing();
  const name = nameOf(desk.household.value, child);

  function mark(facts: readonly FactId[], isMarked: boolean) {
    const next = new Set(marked);
    for (const fact of facts) isMarked ? next.add(fact) : next.delete(fact);
    setupStep.value = { at: 'known', child, marked: next };
  }

  async function goOn() {
    const facts = [...marked];
    if (facts.length > 0) {
      const isRecorded = await act(() => desk.record([{ kind: 'factsTicked', child, facts, known: true }]));
      if (!isRecorded) return;
    }
    setupStep.value = { at: 'set', child };
  }

  return (
    <>
      <Heading>{setupWords.steps.known}</Heading>
      <p>{setupWords.knownLead(name)}</p>
      <FactPicker marked={marked} words={knownWords} onMark={mark} />
      <Trouble sentence={trouble} />
      <div class="actions">
        <button type="button" class="main" aria-disabled={isBusy.value} onClick={goOn}>
          {marked.size > 0 ? setupWords.goOn : setupWords.nothingYet}
        </button>
      </div>
    </>
  );
}
