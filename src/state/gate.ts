import { type ReadonlySignal, signal } from '@preact/signals';
import {
  type GateData,
  type GateStore,
  withTriesForgotten,
  withTryCounted,
  withWaitServed,
} from '../core/gate/gate-data';
import { type PinFault, readPin } from '../core/gate/pin-rule';
import {
  type CodeFault,
  makeRecoveryCode,
  readRecoveryCode,
  recoveryBytes,
} from '../core/gate/recovery-code';
import { longestWaitMs, waitAfterMs, waitAtOpeningMs } from '../core/gate/wait';
import { isSecret, keepSecret, pinRounds } from './pin-hash';

/** `unset`: no PIN has been chosen yet. `renewing`: the recovery code was right and a new PIN is owed. */
export type GatePhase = 'loading' | 'unset' | 'locked' | 'renewing' | 'open' | 'trouble';

/** How a try at the gate went. `waiting`: it came during a wait and was not looked at. */
export type TryResult = 'opened' | 'wrong' | 'waiting' | 'trouble' | PinFault | CodeFault;

/** A PIN made ready: the code to show, and `keep`, which stores both once the code is written down. */
export interface PreparedPin {
  readonly recoveryCode: string;
  keep(): Promise<void>;
}

/** The lock of the parent's side. */
export interface Gate {
  readonly phase: ReadonlySignal<GatePhase>;
  /** Time left of the wait, ms, falling while the page is open. */
  readonly waitLeftMs: ReadonlySignal<number>;
  /** A try is being checked. */
  readonly isChecking: ReadonlySignal<boolean>;
  load(): Promise<void>;
  /** Nothing is stored before `keep`; whoever reloads in between starts again. */
  prepare(pin: string): PreparedPin;
  tryPin(text: string): Promise<TryResult>;
  tryRecoveryCode(text: string): Promise<TryResult>;
  /** Only while open or renewing; the recovery code stays as it is. */
  changePin(pin: string): Promise<void>;
  /** A fresh recovery code for the PIN in use; the old one holds until `keep`. */
  prepareCode(): PreparedPin;
  lock(): void;
}

const tickMs = 250;

/** The gate over its store. `rounds` is for tests alone: a real gate takes OWASP's figure. */
export function createGate(store: GateStore, rounds: number = pinRounds): Gate {
  const phase = signal<GatePhase>('loading');
  const waitLeftMs = signal(0);
  const isChecking = signal(false);
  let waitTimer: ReturnType<typeof setInterval> | undefined;
  // How many wrong tries this page knows of: another tab may have added some.
  let knownTries = 0;
  // Wrong tries that could not be stored.
  let unkept: GateData | null = null;
  // Reading and writing the served wait must not fall between a try's own reading and writing.
  let serving: Promise<void> = Promise.resolve();

  async function stored(): Promise<GateData> {
    const data = await store.read();
    if (!data) throw new Error('the gate has no PIN');
    return unkept && unkept.tries > data.tries ? { ...data, tries: unkept.tries } : data;
  }

  /**
   * Where nothing can be stored, a full disk say, a try could be made again after every reload. Such a try is therefore
   * looked at only once the longest wait has been sat out: whoever reloads begins that wait again, so nobody has more
   * tries in an hour than the stored count allows, and the grown-up still gets in. Whatever could not be stored for
   * whatever reason is treated alike; the count goes on in memory.
   */
  async function count(counted: GateData): Promise<void> {
    try {
      await store.write(counted);
      unkept = null;
    } catch {
      unkept = counted;
      startWait(counted.tries, longestWaitMs);
      await waitSatOut();
    }
  }

  function startWait(tries: number, waitMs: number): void {
    knownTries = tries;
    clearInterval(waitTimer);
    waitLeftMs.value = waitMs;
    if (waitMs === 0) return;
    const endMs = performance.now() + waitMs;
    waitTimer = setInterval(() => {
      waitLeftMs.value = Math.max(0, endMs - performance.now());
      if (waitLeftMs.value > 0) return;
      clearInterval(waitTimer);
      // If this fails, the worst is that a reload brings the wait back.
      serving = stored()
        .then((data) => store.write(withWaitServed(data)))
        .catch(() => undefined);
    }, tickMs);
  }

  function waitSatOut(): Promise<void> {
    return new Promise((resolve) => {
      waitLeftMs.subscribe((leftMs) => {
        if (leftMs === 0) resolve();
      });
    });
  }

  async function opened(data: GateData, next: GatePhase): Promise<TryResult> {
    // Where it cannot be stored the tries stand a while longer; that keeps nobody out who knows the PIN.
    await store.write(withTriesForgotten(data)).catch(() => undefined);
    unkept = null;
    startWait(0, 0);
    phase.value = next;
    return 'opened';
  }

  async function checked(work: () => Promise<TryResult>): Promise<TryResult> {
    if (isChecking.value) return 'waiting';
    isChecking.value = true;
    try {
      return await work();
    } catch {
      return 'trouble';
    } finally {
      isChecking.value = false;
    }
  }

  function needOpen(): void {
    if (phase.value !== 'open' && phase.value !== 'renewing') throw new Error('the gate is shut');
  }

  return {
    phase,
    waitLeftMs,
    isChecking,

    async load() {
      try {
        const data = await store.read();
        phase.value = data ? 'locked' : 'unset';
        if (data) startWait(data.tries, waitAtOpeningMs(data));
      } catch {
        phase.value = 'trouble';
      }
    },

    prepare(pin) {
      const recoveryCode = newCode();
      const secrets = Promise.all([keepSecret(pin, rounds), keepSecret(recoveryCode, rounds)]);
      secrets.catch(() => undefined);
      return {
        recoveryCode,
        async keep() {
          const [keptPin, recovery] = await secrets;
          await store.write({ v: 1, pin: keptPin, recovery, tries: 0, waitDue: false });
          phase.value = 'open';
        },
      };
    },

    tryPin(text) {
      return checked(async () => {
        const reading = readPin(text);
        if (!reading.ok) return reading.fault;
        if (waitLeftMs.value > 0) return 'waiting';
        await serving;
        const before = await stored();
        if (before.tries !== knownTries) startWait(before.tries, waitAtOpeningMs(before));
        if (waitLeftMs.value > 0) return 'waiting';
        const counted = withTryCounted(before);
        await count(counted);
        if (await isSecret(reading.pin, counted.pin)) return opened(counted, 'open');
        startWait(counted.tries, waitAfterMs(counted.tries));
        return 'wrong';
      });
    },

    tryRecoveryCode(text) {
      return checked(async () => {
        const reading = readRecoveryCode(text);
        if (!reading.ok) return reading.fault;
        // 80 random bits need no wait of their own, so the code passes the PIN's.
        await serving;
        const data = await stored();
        return (await isSecret(reading.code, data.recovery)) ? opened(data, 'renewing') : 'wrong';
      });
    },

    async changePin(pin) {
      needOpen();
      const [data, keptPin] = await Promise.all([stored(), keepSecret(pin, rounds)]);
      await store.write(withTriesForgotten({ ...data, pin: keptPin }));
      phase.value = 'open';
    },

    prepareCode() {
      needOpen();
      const recoveryCode = newCode();
      const secret = keepSecret(recoveryCode, rounds);
      secret.catch(() => undefined);
      return {
        recoveryCode,
        async keep() {
          const [data, recovery] = await Promise.all([stored(), secret]);
          await store.write({ ...data, recovery });
        },
      };
    },

    lock() {
      if (phase.value === 'open' || phase.value === 'renewing') phase.value = 'locked';
    },
  };
}

function newCode(): string {
  return makeRecoveryCode(crypto.getRandomValues(new Uint8Array(recoveryBytes)));
}
