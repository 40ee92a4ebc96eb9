import type { Key, Via } from '../core/record/sat';

/** A key meant for the card: which, when it fell on the page's monotonic clock, and how. */
export interface KeyIntent {
  readonly key: Key;
  readonly atMs: number;
  readonly via: Via;
}

/** What the card's keyboard understands besides digits. No letter, so that no shortcut is met by chance. */
const named: Readonly<Record<string, Key>> = { Backspace: 'back', Enter: 'done', ArrowRight: 'skip' };

/** What a keyboard event asks of the card; `null` when it isn't the card's. */
export function readKeyboard(event: KeyboardEvent): KeyIntent | null {
  if (event.repeat || event.ctrlKey || event.metaKey || event.altKey) return null;
  // A button reached with Tab keeps its Enter.
  if (event.key === 'Enter' && isOtherButton(event.target)) return null;
  // The place of the key, not its sign, where the digit row needs Shift or the number block is unlocked.
  const digit = /^\d$/.test(event.key) ? event.key : /^(?:Digit|Numpad)(\d)$/.exec(event.code)?.[1];
  const key = digit ?? named[event.key];
  return key === undefined ? null : { key: key as Key, atMs: event.timeStamp, via: 'keys' };
}

/** Listens to the whole page's keyboard while a card is up; gives the way to stop. */
export function listenToKeyboard(onKey: (intent: KeyIntent) => void): () => void {
  const listen = (event: KeyboardEvent) => {
    const intent = readKeyboard(event);
    if (!intent) return;
    event.preventDefault();
    // A Tab struck beside the 1 must not leave the next Enter to a button of the screen's edge.
    const { activeElement } = document;
    if (activeElement instanceof HTMLElement && activeElement !== document.body) activeElement.blur();
    onKey(intent);
  };
  document.addEventListener('keydown', listen);
  return () => document.removeEventListener('keydown', listen);
}

/**
 * What a press on the keypad asks. Any finger counts, not just the first: a resting palm would take the first, and
 * two thumbs overlap.
 */
export function readPress(event: PointerEvent, key: Key): KeyIntent | null {
  if (event.pointerType === 'mouse' && event.button !== 0) return null;
  return { key, atMs: event.timeStamp, via: 'touch' };
}

function isOtherButton(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('button:not([tabindex="-1"])') !== null;
}
