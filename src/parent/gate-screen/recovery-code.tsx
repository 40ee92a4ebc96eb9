import { useSignal } from '@preact/signals';
import { writeRecoveryCode } from '../../core/gate/recovery-code';
import type { PreparedPin } from '../../state/gate';
import { Tick } from '../parts/tick';
import { codeWords } from './words';

export interface RecoveryCodeProps {
  readonly prepared: PreparedPin;
  readonly onKept: () => void;
}

/** A recovery code to write down; it counts from the moment the parent says it is written. */
export function RecoveryCode({ prepared, onKept }: RecoveryCodeProps) {
  const isWritten = useSignal(false);
  const said = useSignal<string | null>(null);
  const isBusy = useSignal(false);
  const written = writeRecoveryCode(prepared.recoveryCode);

  async function copy() {
    said.value = await navigator.clipboard.writeText(written).then(
      () => codeWords.copied,
      () => codeWords.notCopied,
    );
  }

  async function goOn() {
    if (!isWritten.value) {
      said.value = codeWords.writeFirst;
      return;
    }
    if (isBusy.value) return;
    isBusy.value = true;
    try {
      await prepared.keep();
      onKept();
    } catch {
      said.value = codeWords.codeTrouble;
    } finally {
      isBusy.value = false;
    }
  }

  return (
    <>
      <p class="code-shown">{written}</p>
      <div class="actions">
        <button type="button" onClick={copy}>
          {codeWords.copy}
        </button>
      </div>
      <Tick
        label={codeWords.isWritten}
        isOn={isWritten.value}
        onTurn={(isOn) => {
          isWritten.value = isOn;
          said.value = null;
        }}
      />
      <p class={said.value === codeWords.copied ? 'kept' : 'said'} role="status">
        {said}
      </p>
      <div class="actions">
        <button type="button" class="main" aria-disabled={isBusy.value} onClick={goOn}>
          {codeWords.goOn}
        </button>
      </div>
    </>
  );
}
