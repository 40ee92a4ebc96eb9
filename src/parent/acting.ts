import { type ReadonlySignal, useSignal } from '@preact/signals';
import type { Draft } from '../core/record/record';
import type { Id } from '../core/record/stamp';
import type { Desk } from '../state/desk';
import { partWords } from './parts/words';
import { troubleSentence } from './trouble-words';

/** What was just recorded, in words; without records there is nothing to take back here. */
export interface DoneNow {
  readonly says: string;
  readonly records: readonly Id[];
}

export interface Acting {
  /** Runs one thing to be recorded; answers whether it was. What was typed stays where it is if not. */
  act(work: () => Promise<unknown>): Promise<boolean>;
  /** Records, and says so with a way back. */
  record(desk: Desk, drafts: readonly Draft[], says: string): Promise<boolean>;
  /** Takes back what was said last to be recorded. */
  takeBack(desk: Desk): Promise<boolean>;
  /** Says something of what was just done. */
  say(says: string): void;
  readonly isBusy: ReadonlySignal<boolean>;
  /** A plain sentence on why the last thing could not be recorded. */
  readonly trouble: ReadonlySignal<string | null>;
  readonly done: ReadonlySignal<DoneNow | null>;
}

/** Records one thing at a time and keeps the sentence of what was done, or of what went wrong. */
export function useActing(): Acting {
  const isBusy = useSignal(false);
  const trouble = useSignal<string | null>(null);
  const done = useSignal<DoneNow | null>(null);

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

  return {
    act,
    isBusy,
    trouble,
    done,
    record: (desk, drafts, says) =>
      act(async () => {
        const made = await desk.record(drafts);
        done.value = { says, records: made.map(({ id }) => id) };
      }),
    takeBack: (desk) =>
      act(async () => {
        for (const record of (done.value?.records ?? []).toReversed()) await desk.undo(record);
        done.value = { says: partWords.takenBack, records: [] };
      }),
    say(says) {
      done.value = { says, records: [] };
    },
  };
}
