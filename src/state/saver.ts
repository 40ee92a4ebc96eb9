import { type ReadonlySignal, signal } from '@preact/signals';
import { type LogTrouble, troubleOf } from '../log/trouble';
import type { Ports } from './ports';

/** Writes in the order they came; nothing is dropped, and a write that failed is tried again before the next. */
export interface Saver {
  /** Why the first write in line does not go through; `null` while all is well. */
  readonly trouble: ReadonlySignal<LogTrouble | null>;
  /** Writes not acknowledged yet. */
  readonly waiting: ReadonlySignal<number>;
  save(write: () => Promise<unknown>): void;
  /** Resolves once every write asked for so far is acknowledged; rejects once one of them does not go through. */
  settled(): Promise<void>;
}

const retryAfterMs = 3000;

export function createSaver(ports: Ports): Saver {
  const trouble = signal<LogTrouble | null>(null);
  const waiting = signal(0);
  const line: (() => Promise<unknown>)[] = [];
  const listeners: { readonly resolve: () => void; readonly reject: (why: unknown) => void }[] = [];
  let isRunning = false;
  let cancelRetry = () => {};

  async function run(): Promise<void> {
    if (isRunning) return;
    isRunning = true;
    cancelRetry();
    for (let write = line[0]; write; write = line[0]) {
      try {
        await write();
        line.shift();
        waiting.value = line.length;
        trouble.value = null;
      } catch (error) {
        const why = troubleOf(error);
        trouble.value = why.trouble;
        for (const { reject } of listeners.splice(0)) reject(why);
        cancelRetry = ports.after(retryAfterMs, run);
        break;
      }
    }
    isRunning = false;
    if (line.length > 0) return;
    for (const { resolve } of listeners.splice(0)) resolve();
  }

  return {
    trouble,
    waiting,
    save(write) {
      line.push(write);
      waiting.value = line.length;
      void run();
    },
    settled: () =>
      line.length === 0
        ? Promise.resolve()
        : new Promise((resolve, reject) => {
            listeners.push({ resolve, reject });
            // Where the last try has failed another is made at once, so that nobody waits for the next by itself.
            void run();
          }),
  };
}
