import type { FactId, Operation } from '../../core/fact/fact';
import { operations } from '../../core/fact/fact-list';
import type { Desk } from '../../state/desk';
import { useActing } from '../acting';
import { FactPicker } from '../fact-grid/fact-picker';
import { knownWords } from '../fact-grid/words';
import { Choice } from '../parts/choice';
import { Heading } from '../parts/heading';
import { Trouble } from '../parts/trouble';
import { OperationTicks } from '../spread/operation-ticks';
import { newChild } from './new-child';
import { setupStep } from './progress';
import { useRecordChild } from './use-record-child';
import { setupWords } from './words';

/** What the child answers without working it out: ticked on the fact grid, or left to a spread over two days. */
export function KnownStep({ desk }: { readonly desk: Desk }) {
  const acting = useActing();
  const recordChild = useRecordChild(desk, acting);
  const { way, marked, ops } = newChild;
  const name = newChild.name.value;

  function mark(facts: readonly FactId[], isMarked: boolean) {
    const next = new Set(marked.value);
    for (const fact of facts) isMarked ? next.add(fact) : next.delete(fact);
    marked.value = next;
  }

  function turn(op: Operation, isOn: boolean) {
    ops.value = operations.filter((one) => (one === op ? isOn : ops.value.includes(one)));
  }

  function goOn() {
    if (way.value === 'tick') setupStep.value = { at: 'set' };
    else if (ops.value.length > 0) void recordChild(null);
  }

  return (
    <>
      <Heading>{setupWords.steps.known}</Heading>
      <Choice
        legend={setupWords.way(name)}
        options={[
          { value: 'tick', label: setupWords.wayTick },
          { value: 'spread', label: setupWords.waySpread(name) },
        ]}
        value={way.value}
        onChoose={(value) => {
          way.value = value;
        }}
      />
      {way.value === 'tick' ? (
        <>
          <p>{setupWords.knownLead(name)}</p>
          <FactPicker marked={marked.value} words={knownWords} onMark={mark} offersTurnArounds />
        </>
      ) : (
        <>
          <p>{setupWords.spreadLead(name)}</p>
          <OperationTicks ops={ops.value} onTurn={turn} />
        </>
      )}
      <Trouble sentence={acting.trouble} />
      <div class="actions">
        <button
          type="button"
          class="main"
          aria-disabled={acting.isBusy.value || (way.value === 'spread' && ops.value.length === 0)}
          onClick={goOn}
        >
          {setupWords.goOn}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            setupStep.value = { at: 'child' };
          }}
        >
          {setupWords.back}
        </button>
      </div>
    </>
  );
}
