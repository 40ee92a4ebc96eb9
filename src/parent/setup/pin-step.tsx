import type { Gate } from '../../state/gate';
import { NewPin } from '../gate-screen/new-pin';
import { Heading } from '../parts/heading';
import { setupStep } from './progress';
import { setupWords } from './words';

/** The PIN, typed twice. Nothing is stored before the recovery code is written down. */
export function PinStep({ gate }: { readonly gate: Gate }) {
  return (
    <>
      <Heading>{setupWords.steps.pin}</Heading>
      <p>{setupWords.pinLead}</p>
      <NewPin
        save={setupWords.keepPin}
        onChosen={async (pin) => {
          setupStep.value = { at: 'code', prepared: gate.prepare(pin) };
        }}
      />
    </>
  );
}
