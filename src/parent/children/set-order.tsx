import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Operation } from '../../core/fact/fact';
import { operations, type Reach } from '../../core/fact/fact-list';
import type { Id } from '../../core/record/stamp';
import type { FactSet } from '../../core/set/fact-set';
import { moveSet, orderedSets } from '../../core/set/set-order';
import { useActing } from '../acting';
import { operationNames } from '../fact-grid/words';
import { Choice } from '../parts/choice';
import { Done } from '../parts/done';
import { Tick } from '../parts/tick';
import { Trouble } from '../parts/trouble';
import type { OneChildProps } from './name-and-edge';
import { childrenWords, setWords } from './words';

/** The order in which sets are proposed, the parent's to change a place at a time. */
export function SetOrder({ desk, child }: OneChildProps) {
  const acting = useActing();
  const op = useSignal<Operation>('add');
  const isLarge = useSignal(false);
  const list = useRef<HTMLOListElement>(null);
  /** The button pressed last: its row is moved, and the focus would be lost on the way. */
  const pressed = useSignal<string | null>(null);
  const { setOrder } = child.settings;
  const canBeLarge = op.value === 'mul' || op.value === 'div';
  const reach: Reach = canBeLarge && isLarge.value ? 12 : 9;
  const sets = orderedSets(op.value, reach, setOrder).filter(({ kind }) => kind === 'group');

  useLayoutEffect(() => {
    if (pressed.value) list.current?.querySelector<HTMLElement>(`[data-move="${pressed.value}"]`)?.focus();
  }, [setOrder]);

  const put = (order: readonly Id[], says: string) =>
    acting.record(
      desk,
      [{ kind: 'childSettingsChanged', child: child.id, changes: { setOrder: order } }],
      says,
    );

  function move(set: FactSet, at: number, by: -1 | 1) {
    const order = moveSet(setOrder, set, reach, by);
    if (order === setOrder) return;
    pressed.value = `${set.id} ${by}`;
    void put(order, childrenWords.moved(set.name, at + by + 1));
  }

  function mover(set: FactSet, at: number, by: -1 | 1) {
    const word = by < 0 ? childrenWords.up : childrenWords.down;
    return (
      <button
        type="button"
        data-move={`${set.id} ${by}`}
        aria-label={`${word}: ${set.name}`}
        aria-disabled={!sets[at + by]}
        onClick={() => move(set, at, by)}
      >
        {word}
      </button>
    );
  }

  return (
    <details class="no-print" data-holds=".kept">
      <summary>{childrenWords.order}</summary>
      <p class="hint">{childrenWords.orderLead(child.name)}</p>
      <Choice
        legend={setWords.shelf}
        inRow
        options={operations.map((value) => ({ value, label: operationNames[value] }))}
        value={op.value}
        onChoose={(value) => {
          op.value = value;
        }}
      />
      {canBeLarge && (
        <Tick
          label={setWords.toTwelve}
          isOn={isLarge.value}
          onTurn={(isOn) => {
            isLarge.value = isOn;
          }}
        />
      )}
      <Done desk={desk} acting={acting} />
      <Trouble sentence={acting.trouble} />
      <ol class="set-order" ref={list}>
        {sets.map((set, at) => (
          <li key={set.id}>
            <span>{set.name}</span>
            {mover(set, at, -1)}
            {mover(set, at, 1)}
          </li>
        ))}
      </ol>
      {setOrder.length > 0 && (
        <div class="actions">
          <button type="button" onClick={() => put([], childrenWords.usualAgain)}>
            {childrenWords.usualOrder}
          </button>
        </div>
      )}
    </details>
  );
}
