import { type Signal, signal } from '@preact/signals';

/**
 * Half-typed text, kept outside the page: locking empties the DOM, and after unlocking the text is there again.
 * It lives in memory only and goes with the page.
 */
const drafts = new Map<string, Signal<string>>();

/** The text being typed under a key such as `child-name-new`. */
export function draft(key: string, initial = ''): Signal<string> {
  const known = drafts.get(key);
  if (known) return known;
  const made = signal(initial);
  drafts.set(key, made);
  return made;
}

/** Forgets a text once it has been saved or given up. */
export function dropDraft(key: string): void {
  drafts.delete(key);
}
