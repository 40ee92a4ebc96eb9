import { useSignal } from '@preact/signals';
import type { Gate } from '../../state/gate';
import { Heading } from '../parts/heading';
import { NewPin } from './new-pin';
import { PinEntry } from './pin-entry';
import { Recover } from './recover';
import { gateWords } from './words';

export interface GateScreenProps {
  readonly gate: Gate;
  /** Back to the child's side. */
  readonly onBack: () => void;
}

/** The door of the parent's side: the PIN, the recovery code, a new PIN. */
export function GateScreen({ gate, onBack }: GateScreenProps) {
  const hasForgotten = useSignal(false);
  const phase = gate.phase.value;
  return (
    <main class="parent gate">
      <div class="slip">
        {phase === 'loading' && <p role="status">{gateWords.loading}</p>}
        {phase === 'trouble' && (
          <>
            <Heading>{gateWords.title}</Heading>
            <p role="alert">{gateWords.storageShut}</p>
          </>
        )}
        {phase === 'locked' && !hasForgotten.value && (
          <PinEntry
            gate={gate}
            onForgot={() => {
              hasForgotten.value = true;
            }}
          />
        )}
        {phase === 'locked' && hasForgotten.value && (
          <Recover
            gate={gate}
            onBack={() => {
              hasForgotten.value = false;
            }}
          />
        )}
        {phase === 'renewing' && (
          <>
            <Heading>{gateWords.renewTitle}</Heading>
            <p>{gateWords.renewLead}</p>
            <NewPin save={gateWords.saveNew} onChosen={(pin) => gate.changePin(pin)} />
          </>
        )}
        <p class="slip-foot">
          <button type="button" class="quiet" onClick={onBack}>
            {gateWords.back}
          </button>
        </p>
      </div>
    </main>
  );
}
