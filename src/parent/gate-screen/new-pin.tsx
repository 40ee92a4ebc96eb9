import { useSignal } from '@preact/signals';
import { readPin } from '../../core/gate/pin-rule';
import { Field } from '../parts/field';
import { useFaultFocus } from '../parts/use-fault-focus';
import { gateWords } from './words';

export interface NewPinProps {
  readonly save: string;
  readonly onChosen: (pin: string) => Promise<void>;
}

/** A new PIN, typed twice. */
export function NewPin({ save, onChosen }: NewPinProps) {
  const first = useSignal('');
  const second = useSignal('');
  const firstFault = useSignal<string | null>(null);
  const secondFault = useSignal<string | null>(null);
  const trouble = useSignal<string | null>(null);

  const { form, lookAtFault } = useFaultFocus();

  async function choose(event: Event) {
    event.preventDefault();
    const reading = readPin(first.value);
    const again = readPin(second.value);
    firstFault.value = reading.ok ? null : gateWords.pinFault(reading.fault);
    const isSame = reading.ok && again.ok && reading.pin === again.pin;
    secondFault.value = reading.ok && !isSame ? gateWords.notTheSame : null;
    if (!reading.ok || !isSame) return lookAtFault();
    trouble.value = null;
    try {
      await onChosen(reading.pin);
    } catch {
      trouble.value = gateWords.storageTrouble;
    }
  }

  return (
    <form ref={form} onSubmit={choose} noValidate>
      <input type="text" name="username" autocomplete="username" value="parent" readOnly hidden />
      <Field
        label={gateWords.newPin}
        hint={gateWords.pinHint}
        value={first}
        fault={firstFault.value}
        name="new-pin"
        type="password"
        digits
        autoComplete="new-password"
      />
      <Field
        label={gateWords.newPinAgain}
        value={second}
        fault={secondFault.value}
        name="new-pin-again"
        type="password"
        digits
        autoComplete="new-password"
      />
      <p class="said" role="status">
        {trouble}
      </p>
      <div class="actions">
        <button type="submit" class="main">
          {save}
        </button>
      </div>
    </form>
  );
}
