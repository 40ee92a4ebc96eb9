import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type BrowserContext, builtFolder, launch, type Page, type Served, serveBuilt } from './browser';

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

test('a new version waits, is taken when asked for, and leaves nothing of the old one', async () => {
  const page = await visit();
  const [before] = await cacheNames(page);
  publishNext();
  await page.evaluate(lookForUpdate);
  await page.reload();
  expect(await page.title()).toBe('Sumstitch');
  expect(await cacheNames(page)).toHaveLength(2);

  await page.evaluate(askToTakeOver);
  await expect.poll(() => cacheNames(page)).toHaveLength(1);
  expect(await cacheNames(page)).not.toContain(before);
  await page.reload();
  expect(await page.title()).toBe('Sumstitch, the next');
});

test('a new version declines while a second window is open, which may be in mid-sheet', async () => {
  const page = await visit();
  const second = await visit();
  publishNext();
  await page.evaluate(lookForUpdate);
  await page.evaluate(askToTakeOver);
  // Long enough for a worker that would take over to have done so, which takes about a second.
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

async function lookForUpdate(): Promise<void> {
  const registration = await navigator.serviceWorker.ready;
  await registration.update();
  while (!registration.waiting) await new Promise((done) => setTimeout(done, 20));
}

async function askToTakeOver(): Promise<void> {
  const registration = await navigator.serviceWorker.ready;
  registration.waiting?.postMessage({ type: 'take-over' });
}
