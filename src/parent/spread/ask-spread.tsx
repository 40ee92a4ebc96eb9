import { useSignal } from '@preact/signals';
import type { Operation } from '../../core/fact/fact';
import { operations } from '../../core/fact/fact-list';
import { useActing } from '../acting';
import type { OneChildProps } from '../children/name-and-edge';
import { Done } from '../parts/done';
import { Trouble } from '../parts/trouble';
import { OperationTicks } from './operation-ticks';
import { spreadWords } from './words';

/** A spread for a child already here; taken back while it lasts. */
export function AskSpread({ desk, child }: OneChildProps) {
  const acting = useActing();
  const ops = useSignal<readonly Operation[]>(['add']);
  const { spread } = child;

  const ask = () =>
    ops.value.length > 0 &&
    acting.record(
      desk,
      [{ kind: 'spreadAsked', child: child.id, ops: ops.value }],
      spreadWords.asked(child.name),
    );

  async function stop(record: string) {
    if (await acting.act(() => desk.undo(record))) acting.say(spreadWords.stopped);
  }

  return (
    <details class="no-print" open={spread !== null || acting.done.value !== null} data-holds=".kept">
      <summary>{spreadWords.title}</summary>
      <p class="hint">{spreadWords.lead(child.name)}</p>
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      {spread ? (
        <>
          <p>{spreadWords.running(spread.ops)}</p>
          <div class="actions">
            <button type="button" onClick={() => stop(spread.id)}>
              {spreadWords.stop}
            </button>
          </div>
        </>
      ) : (
        <>
          <OperationTicks
            ops={ops.value}
            onTurn={(op, isOn) => {
              ops.value = operations.filter((one) => (one === op ? isOn : ops.value.includes(one)));
            }}
          />
          <div class="actions">
            <button type="button" aria-disabled={ops.value.length === 0} onClick={ask}>
              {spreadWords.ask}
            </button>
          </div>
        </>
      )}
    </details>
  );
}
