import type { ReadonlySignal } from '@preact/signals';

/** What went wrong with the last thing done, if anything did. The frame stands before it is needed, to be heard. */
export function Trouble({ sentence }: { readonly sentence: ReadonlySignal<string | null> }) {
  return <div role="alert">{sentence.value && <p class="trouble">{sentence.value}</p>}</div>;
}
