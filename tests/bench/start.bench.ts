import { afterEach, test } from 'vitest';
import type { BrowserContext, Page } from '../journeys/browser';
import { closeDevices, openDevice, settle } from '../journeys/device';
import { moveIn } from './bench-home';
import { figureOf, written } from './figures';
import { closePages, openPage } from './open-page';
import { rounds, tell } from './told';

afterEach(async () => {
  await closeDevices();
  await closePages();
});

/** From opening to the first paint, and until the page's own screen stands and hears a key, ms. */
interface Start {
  readonly paint: number;
  readonly ready: number;
}

const openings = 7;

/** Notes when the page's own screen stands: what hears its keys comes with it. Runs in the page, before it. */
function noteReady(): void {
  const watch = new MutationObserver(() => {
    if (!document.querySelector('main h1, main.card')) return;
    performance.mark('ready');
    watch.disconnect();
  });
  watch.observe(document, { childList: true, subtree: true });
}

/** Opens the page again and again, offline and slowed. */
async function startsOf(context: BrowserContext, page: Page, url: string): Promise<readonly Start[]> {
  const starts: Start[] = [];
  await context.setOffline(true);
  await page.close();
  for (let nth = 0; nth < openings; nth += 1) {
    const next = await context.newPage();
    const cdp = await context.newCDPSession(next);
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await next.goto(url);
    await next.waitForFunction(() => performance.getEntriesByName('ready').length > 0);
    const [paint, ready] = await next.evaluate(() =>
      ['first-contentful-paint', 'ready'].map((name) => performance.getEntriesByName(name)[0]?.startTime),
    );
    if (paint !== undefined && ready !== undefined) starts.push({ paint, ready });
    await next.close();
  }
  return starts;
}

const noting = (context: BrowserContext) => context.addInitScript(noteReady);

/** The app in a child's hands: it opens on the next step. */
async function app(): Promise<readonly Start[]> {
  const device = await openDevice({ before: noting });
  const { context, page, served } = device;
  await moveIn(page, { length: 100, minutes: 120, cards: false, lookBackEvery: 0 });
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
      return [name, { paint: middle(({ paint }) => paint), ready: middle(({ ready }) => ready) }] as const;
    }),
  );
  const rows = Object.entries(figures).map(
    ([name, { paint, ready }]) =>
      [name, { 'first paint, ms': written(paint, 0), 'first key heard, ms': written(ready, 0) }] as const,
  );
  tell('start', Object.fromEntries(rows), figures);
});
