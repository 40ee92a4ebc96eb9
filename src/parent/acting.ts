import { type ReadonlySignal, useSignal } from '@preact/signals';
import { troubleSentence } from './trouble-words';

export interface Acting {
  /** Runs one thing to be recorded; answers whether it was. What was typed stays where it is if not. */
  act(work: () => Promise<unknown>): Promise<boolean>;
  readonly isBusy: ReadonlySignal<boolean>;
  /** A plain sentence on why the last thing could not be recorded. */
  readonly trouble: ReadonlySignal<string | null>;
}

/** Records one thing at a time and keeps the sentence of what went wrong. */
export function useActing(): Acting {
  const isBusy = useSignal(false);
  const trouble = useSignal<string | null>(null);
  async function act(work: () => Promise<unknown>): Promise<boolean> {
    if (isBusy.value) return false;
    isBusy.value = true;
    try {
      await work();
      trouble.value = null;
      return true;
    } catch (reason) {
      trouble.value = troubleSentence(reason);
      return false;
    } finally {
      isBusy.value = false;
    }
  }
  return { act, isBusy, trouble };
}
