import { useSignal } from '@preact/signals';
import type { FactId, Operation } from '../../core/fact/fact';
import { Choice } from '../parts/choice';
import { Tick } from '../parts/tick';
import { FactGrid } from './fact-grid';
import { type GridWords, gridWords, operationNames } from './words';

export interface FactPickerProps {
  readonly marked: ReadonlySet<FactId>;
  readonly words: GridWords;
  readonly onMark: (facts: readonly FactId[], isMarked: boolean) => void;
}

const operations: readonly Operation[] = ['add', 'sub', 'mul', 'div'];

/** The fact grids of the four operations, one at a time. */
export function FactPicker({ marked, words, onMark }: FactPickerProps) {
  const op = useSignal<Operation>('add');
  const isLarge = useSignal(false);
  const canBeLarge = op.value === 'mul' || op.value === 'div';
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
      <p class="hint">{gridWords.hint}</p>
      <FactGrid
        op={op.value}
        reach={canBeLarge && isLarge.value ? 12 : 9}
        marked={marked}
        words={words}
        onMark={onMark}
      />
    </>
  );
}
