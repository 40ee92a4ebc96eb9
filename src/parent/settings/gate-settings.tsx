import { useSignal } from '@preact/signals';
import type { Gate, PreparedPin } from '../../state/gate';
import { NewPin } from '../gate-screen/new-pin';
import { RecoveryCode } from '../gate-screen/recovery-code';
import { settingsWords } from './words';

type Doing =
  | { readonly what: 'nothing' }
  | { readonly what: 'pin' }
  | { readonly what: 'code'; readonly prepared: PreparedPin };

/** Another PIN, another recovery code. */
export function GateSettings({ gate }: { readonly gate: Gate }) {
  const doing = useSignal<Doing>({ what: 'nothing' });
  const said = useSignal<string | null>(null);

  function done(sentence: string | null) {
    doing.value = { what: 'nothing' };
    said.value = sentence;
  }

  return (
    <section class="no-print" data-holds="form input:not([hidden]),.kept">
      <h2>{settingsWords.gate}</h2>
      <p class="kept" role="status" tabIndex={-1}>
        {said}
      </p>
      {doing.value.what === 'nothing' && (
        <div class="actions">
          <button
            type="button"
            onClick={() => {
              doing.value = { what: 'pin' };
            }}
          >
            {settingsWords.changePin}
          </button>
          <button
            type="button"
            onClick={() => {
              doing.value = { what: 'code', prepared: gate.prepareCode() };
            }}
          >
            {settingsWords.newCode}
          </button>
        </div>
      )}
      {doing.value.what === 'pin' && (
        <NewPin
          save={settingsWords.savePin}
          onChosen={async (pin) => {
            await gate.changePin(pin);
            done(settingsWords.pinChanged);
          }}
        />
      )}
      {doing.value.what === 'code' && (
        <>
          <p>{settingsWords.newCodeLead}</p>
          <RecoveryCode prepared={doing.value.prepared} onKept={() => done(settingsWords.codeChanged)} />
        </>
      )}
      {doing.value.what !== 'nothing' && (
        <button type="button" class="quiet" onClick={() => done(null)}>
          {settingsWords.cancel}
        </button>
      )}
    </section>
  );
}
