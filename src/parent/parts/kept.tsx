import { type ReadonlySignal, useSignal } from '@preact/signals';
import { partWords } from './words';

/** Whether what a switch was turned to has been recorded. */
export interface KeptState {
  readonly isKept: ReadonlySignal<boolean>;
  /** Waits for what a handler gave back; anything but a promise of `true` says nothing. */
  follow(result: unknown): void;
}

export function useKept(): KeptState {
  const isKept = useSignal(false);
  return {
    isKept,
    follow(result) {
      if (!(result instanceof Promise)) return;
      isKept.value = false;
      void result.then((isDone) => {
        isKept.value = isDone === true;
      });
    },
  };
}

/** Says quietly that a switch was kept; the frame stands before it is needed, to be heard. */
export function Kept({ isKept }: { readonly isKept: ReadonlySignal<boolean> }) {
  return (
    <span class="kept" role="status">
      {isKept.value ? partWords.kept : null}
    </span>
  );
}
