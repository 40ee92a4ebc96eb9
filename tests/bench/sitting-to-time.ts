import { setTimeout as sleep } from 'node:timers/promises';
import type { CDPSession, Page } from 'playwright';
import { nextCard } from '../journeys/child-hand';
import { presentedCards, trace } from './presented';

/** One card that was answered. Times in ms on the page's clock. */
export interface Timed {
  /** From 0, among the cards answered. */
  readonly nth: number;
  readonly card: string;
  /** When it was truly on the screen. */
  readonly shownMs: number;
  readonly firstKeyMs: number;
  /** From the key that took the answer until the next card was truly on the screen. */
  readonly toNextMs: number | null;
}

export interface Hands {
  readonly page: Page;
  readonly cdp: CDPSession;
  /** The keys that answer a card, the last of them bringing the next one. */
  readonly keysOf: (card: { readonly text: string; readonly answer: string }) => readonly string[];
}

/** Sooner than this after a card a key belongs to the card before. */
const soonestMs = 290;

/**
 * Answers so many cards with keys that fall when they say they fall, give or take the browser's way of counting, and
 * tells from a trace when each card was on the screen.
 */
export async function answerCards({ page, cdp, keysOf }: Hands, many: number): Promise<readonly Timed[]> {
  const originMs = await page.evaluate(() => performance.timeOrigin);
  const nowMs = () => performance.timeOrigin + performance.now() - originMs;
  // What is up already was on the screen before the trace: its answer is given, and not counted.
  const end = await trace(cdp);
  const given: { card: string; firstKeyMs: number; lastKeyMs: number }[] = [];
  let card = await nextCard(page, null);
  while (card && given.length < many) {
    await sleep(soonestMs + 40 * Math.random());
    let [firstKeyMs, lastKeyMs] = [0, 0];
    for (const key of keysOf(card)) {
      lastKeyMs = nowMs();
      firstKeyMs ||= lastKeyMs;
      const stroke = {
        key,
        code: /^\d$/.test(key) ? `Digit${key}` : key,
        timestamp: (originMs + lastKeyMs) / 1000,
      };
      await cdp.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...stroke });
      await cdp.send('Input.dispatchKeyEvent', { type: 'keyUp', ...stroke });
    }
    given.push({ card: card.id, firstKeyMs, lastKeyMs });
    card = await nextCard(page, card.id);
  }
  const presented = presentedCards(await end());
  return given.flatMap(({ card: id, firstKeyMs, lastKeyMs }, nth) => {
    const shownMs = presented.get(id);
    const nextMs = presented.get(given[nth + 1]?.card ?? '');
    if (shownMs === undefined) return [];
    return [
      { nth, card: id, shownMs, firstKeyMs, toNextMs: nextMs === undefined ? null : nextMs - lastKeyMs },
    ];
  });
}
