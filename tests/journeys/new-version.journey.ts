import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import { type BrowserContext, builtFolder, launch, type Page, type Served, serveBuilt } from './browser';
import { keyHand, keysFor, nextCard, sit } from './child-hand';
import { press, seeHeading, setUp } from './parent-hand';
import { storedPlan } from './stored';

let folder: string;
let served: Served;
let context: BrowserContext;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'sumstitch-built-'));
  cpSync(builtFolder, folder, { recursive: true });
  served = await serveBuilt({ folder });
  context = await launch();
});
afterEach(async () => {
  await context.close();
  await served.close();
  rmSync(folder, { recursive: true });
});

test('a new version is taken between sittings, by itself, and leaves nothing of the old one', async () => {
  const page = await visit();
  const [before] = await cacheNames(page);
  publishNext();
  await lookForUpdate(page);
  await expect.poll(() => page.title()).toBe('Sumstitch, the next');
  await expect.poll(() => cacheNames(page)).toHaveLength(1);
  expect(await cacheNames(page)).not.toContain(before);
});

test('in mid-sheet it waits, and is taken when the sheet is done, the child’s step being the same', async () => {
  const page = await visit();
  const device = { page, cdp: await context.newCDPSession(page) };
  await setUp(page, 'Wren');
  await press(page, 'OK');
  await press(page, 'Begin');
  await sit(page, await keyHand(device), { until: 2 });
  publishNext();
  await lookForUpdate(page);
  await expect.poll(() => cacheNames(page)).toHaveLength(2);
  // Long enough for a worker that would take over to have done so, which takes about a second.
  await page.waitForTimeout(2_500);
  expect(await page.title()).toBe('Sumstitch');
  const hand = await keyHand(device);
  const { prompts } = await storedPlan(page);
  await sit(page, hand, { until: prompts.length - 3 });
  const last = await nextCard(page, null);
  if (!last) throw new Error('There is no last card.');
  for (const key of [...keysFor(last, 'right'), 'done' as const]) await hand.press(key, last.seenMs + 320);
  await expect.poll(() => page.title()).toBe('Sumstitch, the next');
  await seeHeading(page, words.firstTry);
});

test('a new version declines while a second window is open, which may be in mid-sheet', async () => {
  const page = await visit();
  const second = await visit();
  publishNext();
  await lookForUpdate(page);
  await expect.poll(() => cacheNames(page)).toHaveLength(2);
  await page.waitForTimeout(2_500);
  expect(await cacheNames(page)).toHaveLength(2);
  await second.close();
  await page.evaluate(askToTakeOver);
  await expect.poll(() => cacheNames(page)).toHaveLength(1);
});

async function visit(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.url);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  return page;
}

function publishNext(): void {
  change('index.html', '<title>Sumstitch<', '<title>Sumstitch, the next<');
  change('service-worker.js', /"version":"\w+"/, '"version":"thenext"');
}

function change(file: string, from: string | RegExp, to: string): void {
  const path = join(folder, file);
  const text = readFileSync(path, 'utf8');
  const changed = text.replace(from, to);
  expect(changed).not.toBe(text);
  writeFileSync(path, changed);
}

function cacheNames(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => caches.keys());
}

/** Asks for what is new; the page may reload with it before it can answer. */
async function lookForUpdate(page: Page): Promise<void> {
  await page.evaluate(() => void navigator.serviceWorker.ready.then((registration) => registration.update()));
}

async function askToTakeOver(): Promise<void> {
  const registration = await navigator.serviceWorker.ready;
  registration.waiting?.postMessage({ type: 'take-over' });
}
