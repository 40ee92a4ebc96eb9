import type { Operation } from '../../core/fact/fact';
import { operations } from '../../core/fact/fact-list';
import { operationNames } from '../fact-grid/words';
import { Tick } from '../parts/tick';
import { spreadWords } from './words';

export interface OperationTicksProps {
  readonly ops: readonly Operation[];
  readonly onTurn: (op: Operation, isOn: boolean) => void;
}

/** Which operations a spread looks into. */
export function OperationTicks({ ops, onTurn }: OperationTicksProps) {
  return (
    <fieldset class="choice choice-row">
      <legend>{spreadWords.over}</legend>
      <div class="choice-options">
        {operations.map((op) => (
          <Tick
            key={op}
            label={operationNames[op]}
            isOn={ops.includes(op)}
            onTurn={(isOn) => onTurn(op, isOn)}
          />
        ))}
      </div>
      {ops.length === 0 && <p class="hint">{spreadWords.none}</p>}
    </fieldset>
  );
}
