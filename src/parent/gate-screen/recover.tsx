import { useSignal } from '@preact/signals';
import type { Gate } from '../../state/gate';
import { Field } from '../parts/field';
import { Heading } from '../parts/heading';
import { codeSentence, gateWords } from './words';

export interface RecoverProps {
  readonly gate: Gate;
  readonly onBack: () => void;
}

/** The recovery code in the PIN's place. */
export function Recover({ gate, onBack }: RecoverProps) {
  const text = useSignal('');
  const said = useSignal<string | null>(null);

  async function tryIt(event: Event) {
    event.preventDefault();
    said.value = codeSentence(await gate.tryRecoveryCode(text.value));
  }

  return (
    <form onSubmit={tryIt} noValidate>
      <Heading>{gateWords.recoverTitle}</Heading>
      <p>{gateWords.recoverLead}</p>
      <Field label={gateWords.code} hint={gateWords.codeHint} value={text} wide />
      <p class="said" role="status">
        {said}
      </p>
      <div class="actions">
        <button type="submit" class="main" aria-disabled={gate.isChecking.value}>
          {gate.isChecking.value ? gateWords.checking : gateWords.useCode}
        </button>
        <button type="button" class="quiet" onClick={onBack}>
          {gateWords.backToPin}
        </button>
      </div>
    </form>
  );
}
