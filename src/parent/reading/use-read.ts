import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

/**
 * Something that takes a moment to read, read once the page stands; `null` until then. While the inputs change what was
 * read last stays, so a page that may come to be about another child is keyed by that child.
 */
export function useRead<T>(read: () => T, inputs: readonly unknown[]): T | null {
  const value = useSignal<{ readonly of: T } | null>(null);
  useEffect(() => {
    const waiting = setTimeout(() => {
      value.value = { of: read() };
    });
    return () => clearTimeout(waiting);
  }, inputs);
  return value.value?.of ?? null;
}
