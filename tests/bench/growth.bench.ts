import { afterEach, test } from 'vitest';
import { keyHand, sit } from '../journeys/child-hand';
import { closeDevices, type Device, settle } from '../journeys/device';
import { beginSheet } from '../journeys/morning';
import { heading, openPages, press } from '../journeys/parent-hand';
import { at, figureOf, written } from './figures';
import { openYears } from './open-years';
import { openingBy } from './page-opening';
import { tell } from './told';
import { recordsOf } from './years-in-store';

afterEach(closeDevices);

const sizes = (process.env['BENCH_SIZES'] ?? '0,100,1000,10800,50000').split(',').map(Number);
const openings = 7;

/** Notes when the app's own screen stood, and how long each write of an answer took; runs before the page's own code. */
function noteCosts(): void {
  const watch = new MutationObserver(() => {
    if (!document.querySelector('main h1')) return;
    performance.mark('screen');
    watch.disconnect();
  });
  watch.observe(document, { childList: true, subtree: true });
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (value, key) {
    const beganMs = performance.now();
    if (String(key).startsWith('journal/'))
      this.transaction.addEventListener('complete', () => {
        performance.measure('answer', { start: beganMs, end: performance.now() });
      });
    return put.call(this, value, key);
  };
}

interface Cost {
  /** From opening to the app's own screen, ms. */
  readonly opening: readonly number[];
  /** Of one answer, until it is on the disk, ms. */
  readonly answer: readonly number[];
  /** The parent's Today, its code there, ms. */
  readonly today: number;
  /** Bytes in memory with the kiosk open, and with the parent's pages open. */
  readonly kioskBytes: number;
  readonly parentBytes: number;
}

async function costOf(sittings: number): Promise<Cost> {
  const device = await openYears(recordsOf(sittings));
  const { page, context, cdp } = device;
  await context.addInitScript(noteCosts);
  const opening: number[] = [];
  for (let nth = 0; nth < openings; nth += 1) {
    await page.reload();
    await settle(page);
    opening.push(
      await page.evaluate(() => performance.getEntriesByName('screen')[0]?.startTime ?? Number.NaN),
    );
  }
  const kioskBytes = await heapOf(device);
  if ((await heading(page)) !== '') await press(page, 'Ann').catch(() => undefined);
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device), { until: 10 });
  const answer = await page.evaluate(() =>
    performance.getEntriesByName('answer').map(({ duration }) => duration),
  );
  await openPages(page);
  await page.waitForTimeout(3000);
  await openingBy(page, 'Settings');
  const { ms: today } = await openingBy(page, 'Today');
  const parentBytes = await heapOf(device);
  await cdp.detach();
  await device.close();
  return { opening, answer, today, kioskBytes, parentBytes };
}

async function heapOf({ cdp }: Device): Promise<number> {
  await cdp.send('HeapProfiler.collectGarbage');
  await cdp.send('Performance.enable');
  const { metrics } = await cdp.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN;
}

/** By which power of the size a cost grows, between the smallest and the greatest log that has any. */
function powerOf(costs: readonly (readonly [size: number, cost: number])[]): number {
  const [first, last] = [costs.find(([size]) => size > 0), costs.at(-1)];
  return first && last ? Math.log(last[1] / first[1]) / Math.log(last[0] / first[0]) : Number.NaN;
}

test('what grows with the log', async () => {
  const costs: [size: number, cost: Cost][] = [];
  for (const size of sizes) costs.push([size, await costOf(size)]);
  const [, none] = costs[0] ?? [];
  const rows = costs.map(([size, cost]) => {
    const perSitting = size === 0 ? 0 : (cost.parentBytes - (none?.parentBytes ?? 0)) / size;
    return [
      `${size} sittings`,
      {
        'kiosk opens, ms': written(figureOf(cost.opening), 0),
        'answer on the disk, ms p50': at(cost.answer, 0.5).toFixed(1),
        'Today, ms': cost.today.toFixed(0),
        'kiosk, MB': (cost.kioskBytes / 1e6).toFixed(1),
        'parent’s pages, MB': (cost.parentBytes / 1e6).toFixed(1),
        'kB a sitting': (perSitting / 1000).toFixed(1),
      },
    ] as const;
  });
  const power = (of: (cost: Cost) => number) =>
    powerOf(costs.map(([size, cost]) => [size, of(cost)])).toFixed(2);
  tell(
    'growth',
    Object.fromEntries([
      ...rows,
      [
        'grows by the power of',
        {
          'kiosk opens, ms': power(({ opening }) => at(opening, 0.5)),
          'answer on the disk, ms p50': power(({ answer }) => at(answer, 0.5)),
          'Today, ms': power(({ today }) => today),
          'kiosk, MB': power(({ kioskBytes }) => kioskBytes),
          'parent’s pages, MB': power(({ parentBytes }) => parentBytes),
        },
      ],
    ]),
    costs,
  );
});
