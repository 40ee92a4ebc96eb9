import type { Key } from '../../src/core/record/sat';
import type { Page } from './browser';
import type { Device } from './device';
import { answerTo, readCard } from './read-card';

/** Presses keys of the card, at a moment on the page's monotonic clock, which may lie ahead of now. */
export interface Hand {
  readonly press: (key: Key, atMs: number) => Promise<void>;
}

/** A card on the screen: its element's id, what it reads, the true answer, and when it was seen. */
export interface Card {
  readonly id: string;
  readonly text: string;
  readonly answer: string;
  readonly seenMs: number;
}

const keyNames: Readonly<Partial<Record<Key, string>>> = {
  back: 'Backspace',
  done: 'Enter',
  skip: 'ArrowRight',
};

/** A hand on the keyboard. */
export async function keyHand({ cdp, page }: Pick<Device, 'cdp' | 'page'>): Promise<Hand> {
  const originMs = await page.evaluate(() => performance.timeOrigin);
  return {
    async press(key, atMs) {
      const name = keyNames[key] ?? key;
      const event = { key: name, code: keyNames[key] ?? `Digit${key}`, timestamp: (originMs + atMs) / 1000 };
      await cdp.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...event });
      await cdp.send('Input.dispatchKeyEvent', { type: 'keyUp', ...event });
    },
  };
}

/** A finger on the keypad that is on the screen. */
export async function touchHand({ cdp, page }: Pick<Device, 'cdp' | 'page'>): Promise<Hand> {
  const originMs = await page.evaluate(() => performance.timeOrigin);
  const places = new Map<Key, Place>();
  for (const key of ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'back', 'skip', 'done'] as const)
    places.set(key, await middleOf(page, key));
  return {
    async press(key, atMs) {
      const { x, y } = places.get(key) ?? (await middleOf(page, key));
      const timestamp = (originMs + atMs) / 1000;
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }], timestamp });
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [], timestamp });
    },
  };
}

interface Place {
  readonly x: number;
  readonly y: number;
}

async function middleOf(page: Page, key: Key): Promise<Place> {
  const box = await page.locator(`.key-${key}`).boundingBox();
  if (!box) throw new Error(`There is no key ${key} on the screen.`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The card that comes after the one with this id, once it was painted; `null` when there is no card any more. */
export async function nextCard(page: Page, after: string | null): Promise<Card | null> {
  const isPainted = await page.evaluate(async (last) => {
    const frame = () => new Promise(requestAnimationFrame);
    const giveUpMs = performance.now() + 10_000;
    for (;;) {
      const card = document.querySelector('.card [id^="card-"]');
      if (!card) return false;
      if (card.id !== last) break;
      if (performance.now() > giveUpMs) throw new Error(`No card comes after ${last}.`);
      await frame();
    }
    // No hand answers sooner, and the app has been told of the paint by then.
    for (let frames = 0; frames < 3; frames += 1) await frame();
    return true;
  }, after);
  const card = isPainted ? await readCard(page) : null;
  if (!card) return null;
  return { ...card, seenMs: await page.evaluate(() => performance.now()), answer: answerTo(card.text) };
}

/** What a child does with a card: the true answer, a wrong one, or later. */
export type Does = 'right' | 'wrong' | 'skip';

/** How a child sits: what it does with the nth card, and when its answer falls. */
export interface Manner {
  readonly does?: (card: Card, nth: number) => Does;
  /** On the page's clock; must be past the 250 ms in which a key belongs to the card before. */
  readonly atMs?: (card: Card, nth: number) => number;
  /** Whether cards take an answer by its digits, so that *done* would fall on the next one. */
  readonly takesItself?: boolean;
  /** Stops before the nth card. */
  readonly until?: number;
}

/** Sits card after card until there are none; gives the cards in the order they came. */
export async function sit(page: Page, hand: Hand, manner: Manner = {}): Promise<readonly Card[]> {
  const {
    does = () => 'right',
    atMs = (card) => card.seenMs + 320,
    takesItself = false,
    until = 300,
  } = manner;
  const cards: Card[] = [];
  for (
    let card = await nextCard(page, null);
    card && cards.length < until;
    card = await nextCard(page, card.id)
  ) {
    const digits = keysFor(card, does(card, cards.length));
    const keys = takesItself || digits[0] === 'skip' ? digits : [...digits, 'done' as const];
    const at = atMs(card, cards.length);
    for (const key of keys) await hand.press(key, at);
    cards.push(card);
  }
  return cards;
}

/** The keys of an answer as long as the true one. */
export function keysFor({ answer }: Card, does: Does): readonly Key[] {
  if (does === 'skip') return ['skip'];
  const wrong = answer.replace(/\d$/, (digit) => (digit === '9' ? '8' : '9'));
  return [...(does === 'right' ? answer : wrong)] as Key[];
}
