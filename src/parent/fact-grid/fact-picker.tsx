import { useSignal } from '@preact/signals';
import type { FactId, Operation } from '../../core/fact/fact';
import { knownFact, operations } from '../../core/fact/fact-list';
import { turnAround } from '../../core/fact/family';
import { Choice } from '../parts/choice';
import { Tick } from '../parts/tick';
import { FactGrid } from './fact-grid';
import { type GridWords, gridWords, operationNames } from './words';

export interface FactPickerProps {
  readonly marked: ReadonlySet<FactId>;
  readonly words: GridWords;
  readonly onMark: (facts: readonly FactId[], isMarked: boolean) => void;
  /** Offers to mark 0 + 7 with 7 + 0; on unless turned off. */
  readonly offersTurnArounds?: boolean;
}

/** The fact grids of the four operations, one at a time. */
export function FactPicker({ marked, words, onMark, offersTurnArounds = false }: FactPickerProps) {
  const op = useSignal<Operation>('add');
  const isLarge = useSignal(false);
  const isTurned = useSignal(true);
  const canBeLarge = op.value === 'mul' || op.value === 'div';
  const canTurn = offersTurnArounds && (op.value === 'add' || op.value === 'mul');

  function mark(facts: readonly FactId[], isMarked: boolean) {
    onMark(canTurn && isTurned.value ? withTurnArounds(facts) : facts, isMarked);
  }

  return (
    <>
      <Choice
        legend={gridWords.which}
        inRow
        options={operations.map((value) => ({ value, label: operationNames[value] }))}
        value={op.value}
        onChoose={(value) => {
          op.value = value;
        }}
      />
      {canBeLarge && (
        <Tick
          label={gridWords.toTwelve}
          isOn={isLarge.value}
          onTurn={(isOn) => {
            isLarge.value = isOn;
          }}
        />
      )}
      {canTurn && (
        <Tick
          label={gridWords.turned(op.value)}
          isOn={isTurned.value}
          onTurn={(isOn) => {
            isTurned.value = isOn;
          }}
        />
      )}
      <p class="hint">{gridWords.hint}</p>
      <FactGrid
        op={op.value}
        reach={canBeLarge && isLarge.value ? 12 : 9}
        marked={marked}
        words={words}
        onMark={mark}
      />
    </>
  );
}

function withTurnArounds(facts: readonly FactId[]): readonly FactId[] {
  const turned = facts.flatMap((id) => {
    const fact = knownFact(id);
    return (fact && turnAround(fact)?.id) ?? [];
  });
  return [...new Set([...facts, ...turned])];
}
