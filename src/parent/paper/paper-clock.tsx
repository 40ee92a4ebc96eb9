import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Desk } from '../../state/desk';
import { Thread } from '../../ui/thread';
import { draft } from '../drafts';
import { Field } from '../parts/field';
import { Tick } from '../parts/tick';
import { turnToPart } from './paper-place';
import { clockWords } from './words';

/** The limits that Settings sets an allowance. */
const secondsFrom = 5;
const secondsTo = 600;

/** Often enough that nobody is taken to have left while the clock runs, ms. */
const stirMs = 60_000;

/** A clock for a sheet on the table: the thread, the soft bell, no numbers. */
export function PaperClock({ desk }: { readonly desk: Desk }) {
  const household = desk.household.value;
  const first = household.children.find(({ archived }) => !archived);
  const seconds = draft('paper-clock-seconds', `${first?.settings.allowanceS ?? 45}`);
  const isHidden = useSignal(false);
  const fault = useSignal<string | null>(null);
  const runs = useSignal<number | null>(null);
  const hasRung = useSignal(false);
  const allowanceMs = runs.value;

  useEffect(() => {
    if (allowanceMs === null) return undefined;
    const bell = setTimeout(() => {
      runs.value = null;
      hasRung.value = true;
      desk.ringBell();
    }, allowanceMs);
    // The parent's side locks when nobody stirs; here somebody watches the clock.
    const stir = setInterval(() => document.dispatchEvent(new Event('input')), stirMs);
    const sleep = stayAwake();
    return () => {
      clearTimeout(bell);
      clearInterval(stir);
      sleep();
    };
  }, [allowanceMs]);

  function start(event: Event) {
    event.preventDefault();
    const wanted = Number(seconds.value.trim());
    const isGood = Number.isInteger(wanted) && wanted >= secondsFrom && wanted <= secondsTo;
    fault.value = isGood ? null : clockWords.fault(secondsFrom, secondsTo);
    if (!isGood) return;
    hasRung.value = false;
    runs.value = wanted * 1000;
  }

  if (allowanceMs !== null) {
    return (
      <div class="no-print paper-clock">
        <p role="status" class="only-heard">
          {clockWords.running}
        </p>
        <div class="paper-thread">
          {!isHidden.value && <Thread allowanceMs={allowanceMs} elapsedMs={0} running />}
        </div>
        <button
          type="button"
          onClick={() => {
            runs.value = null;
          }}
        >
          {clockWords.stop}
        </button>
      </div>
    );
  }
  return (
    <form class="no-print" onSubmit={start} noValidate>
      {hasRung.value ? (
        <p class="bell-rang" role="status">
          {clockWords.bell}
        </p>
      ) : (
        <p>{clockWords.lead}</p>
      )}
      {!household.settings.sounds && <p class="hint">{clockWords.soundsOff}</p>}
      <Field label={clockWords.seconds} value={seconds} fault={fault.value} digits />
      <Tick
        label={clockWords.hidden}
        isOn={isHidden.value}
        onTurn={(isOn) => {
          isHidden.value = isOn;
        }}
      />
      <div class="actions">
        {hasRung.value && (
          <button
            type="button"
            class="main"
            onClick={() => {
              turnToPart('result');
            }}
          >
            {clockWords.result}
          </button>
        )}
        <button type="submit" class={hasRung.value ? '' : 'main'}>
          {hasRung.value ? clockWords.again : clockWords.start}
        </button>
      </div>
    </form>
  );
}

/** Keeps the screen on where that is granted; gives the way to let it sleep. */
function stayAwake(): () => void {
  let isWanted = true;
  let lock: WakeLockSentinel | null = null;
  if ('wakeLock' in navigator) {
    navigator.wakeLock.request('screen').then(
      (granted) => {
        if (isWanted) lock = granted;
        else void granted.release();
      },
      () => undefined,
    );
  }
  return () => {
    isWanted = false;
    void lock?.release();
  };
}
