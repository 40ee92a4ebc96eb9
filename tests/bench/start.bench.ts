import { afterEach, test } from 'vitest';
import type { BrowserContext, Page } from '../journeys/browser';
import { keyHand } from '../journeys/child-hand';
import { closeDevices, openDevice, settle } from '../journeys/device';
import { beginSheet } from '../journeys/morning';
import { moveIn } from './bench-home';
import { figureOf, written } from './figures';
import { closePages, openPage } from './open-page';
import { rounds, tell } from './told';

afterEach(async () => {
  await closeDevices();
  await closePages();
});

/** From opening to the first paint and to the first key on the screen, ms. */
interface Start {
  readonly paint: number;
  readonly key: number;
}

const openings = 7;

/** Notes when the first key changed what stands in the answer; runs in the page, before it. */
function noteFirstKey(): void {
  addEventListener('DOMContentLoaded', () => {
    new MutationObserver(() => {
      if (
        document.querySelector('output')?.textContent?.includes('1') &&
        !performance.getEntriesByName('key')[0]
      )
        performance.mark('key');
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
  });
}

/** Opens the page again and again, offline and slowed, keys falling all the while. */
async function startsOf(context: BrowserContext, page: Page, url: string): Promise<readonly Start[]> {
  const starts: Start[] = [];
  await context.setOffline(true);
  for (let nth = 0; nth < openings; nth += 1) {
    await page.close();
    const next = await context.newPage();
    const cdp = await context.newCDPSession(next);
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await next.goto(url, { waitUntil: 'commit' });
    const stroke = { key: '1', code: 'Digit1' };
    let key: number | undefined;
    for (let tries = 0; key === undefined && tries < 1000; tries += 1) {
      await cdp.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...stroke });
      await cdp.send('Input.dispatchKeyEvent', { type: 'keyUp', ...stroke });
      key = await next.evaluate(() => performance.getEntriesByName('key')[0]?.startTime);
    }
    const paint = await next.evaluate(
      () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
    );
    if (paint !== undefined && key !== undefined) starts.push({ paint, key });
    page = next;
  }
  return starts;
}

const noting = (context: BrowserContext) => context.addInitScript(noteFirstKey);

/** The app in mid-sheet: it opens on the card that stands. */
async function app(): Promise<readonly Start[]> {
  const device = await openDevice({ before: noting });
  const { context, page, served } = device;
  await moveIn(page, { length: 100, minutes: 120, cards: false, lookBackEvery: 0 });
  await beginSheet(page, () => keyHand(device));
  await settle(page);
  const starts = await startsOf(context, page, served.url);
  await device.close();
  return starts;
}

async function floor(): Promise<readonly Start[]> {
  const { context, page, served, close } = await openPage('floor', noting);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  const starts = await startsOf(context, page, served.url);
  await close();
  return starts;
}

test('start, offline from the service worker, processor slowed 4×', async () => {
  const made = { app: [] as (readonly Start[])[], floor: [] as (readonly Start[])[] };
  for (let round = 0; round < rounds; round += 1) {
    made.app.push(await app());
    made.floor.push(await floor());
  }
  const figures = Object.fromEntries(
    Object.entries(made).map(([name, all]) => {
      const middle = (of: (start: Start) => number) =>
        figureOf(all.map((starts) => figureOf(starts.map(of)).median));
      return [name, { paint: middle(({ paint }) => paint), key: middle(({ key }) => key) }] as const;
    }),
  );
  const rows = Object.entries(figures).map(
    ([name, { paint, key }]) =>
      [name, { 'first paint, ms': written(paint, 0), 'first key handled, ms': written(key, 0) }] as const,
  );
  tell('start', Object.fromEntries(rows), figures);
});
