import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { runSteps, type Steps } from './steps';

/**
 * Something that takes a moment to read, read once the page stands; `null` until then. What takes long is read in steps,
 * so that no press waits for it. While the inputs change what was read last stays, so a page that may come to be about
 * another child is keyed by that child.
 */
export function useRead<T>(read: () => T | Steps<T>, inputs: readonly unknown[]): T | null {
  const value = useSignal<{ readonly of: T } | null>(null);
  useEffect(() => {
    const steps = (function* () {
      const first = read();
      return isSteps(first) ? yield* first : first;
    })();
    return runSteps(steps, (of) => {
      value.value = { of };
    });
  }, inputs);
  return value.value?.of ?? null;
}

function isSteps<T>(read: T | Steps<T>): read is Steps<T> {
  return typeof read === 'object' && read !== null && 'next' in read;
}
