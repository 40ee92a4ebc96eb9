import { useComputed, useSignal, useSignalEffect } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Gate } from '../../state/gate';
import { Field } from '../parts/field';
import { Tick } from '../parts/tick';
import { gateWords, pinSentence } from './words';

export interface PinEntryProps {
  readonly gate: Gate;
  readonly onForgot: () => void;
}

/** The PIN and the waits. What was typed stays in the field during a wait. */
export function PinEntry({ gate, onForgot }: PinEntryProps) {
  const text = useSignal('');
  // After a reload in mid-wait nobody has said yet why there is one.
  const said = useSignal(gate.waitLeftMs.peek() > 0 ? gateWords.waitStands(gate.waitLeftMs.peek()) : null);
  const isShown = useSignal(false);
  const form = useRef<HTMLFormElement>(null);
  const isWaiting = useComputed(() => gate.waitLeftMs.value > 0);
  const wasWaiting = useRef(false);

  useSignalEffect(() => {
    const isChecking = gate.isChecking.peek();
    if (isChecking && isWaiting.value) said.value = gateWords.notNoted;
    if (wasWaiting.current && !isWaiting.value && !isChecking) said.value = gateWords.waitOver;
    wasWaiting.current = isWaiting.value;
  });

  const focusField = () => form.current?.querySelector<HTMLInputElement>('input[name="pin"]')?.focus();
  useLayoutEffect(focusField, []);

  async function tryIt(event: Event) {
    event.preventDefault();
    const result = await gate.tryPin(text.value);
    const waitMs = gate.waitLeftMs.value;
    said.value = result === 'wrong' && waitMs > 0 ? gateWords.waitBegins(waitMs) : pinSentence(result);
    if (result !== 'wrong') return;
    text.value = '';
    focusField();
  }

  return (
    <form ref={form} onSubmit={tryIt} noValidate>
      <h1>{gateWords.title}</h1>
      <p>{gateWords.lead}</p>
      {/* Password managers fill a PIN only beside a user name. */}
      <input type="text" name="username" autocomplete="username" value="parent" readOnly hidden />
      <Field
        label={gateWords.pin}
        name="pin"
        value={text}
        type={isShown.value ? 'text' : 'password'}
        digits
        autoComplete="current-password"
      />
      <Tick
        label={gateWords.showDigits}
        isOn={isShown.value}
        onTurn={(isOn) => {
          isShown.value = isOn;
        }}
      />
      <p class="said" role="status">
        {said}
      </p>
      {/* The falling count is for the eye alone: a screen reader hears the beginning and the end of a wait. */}
      {isWaiting.value && (
        <p class="hint" aria-hidden="true">
          {gateWords.waitLeft(gate.waitLeftMs.value)}
        </p>
      )}
      <div class="actions">
        <button type="submit" class="main" aria-disabled={isWaiting.value || gate.isChecking.value}>
          {gate.isChecking.value ? gateWords.checking : gateWords.open}
        </button>
        <button type="button" class="quiet" onClick={onForgot}>
          {gateWords.forgot}
        </button>
      </div>
    </form>
  );
}
