import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { builtFolder, collectForeignRequests, launch, makeProfile, serveBuilt } from './browser';

const cleanups: (() => unknown)[] = [];
afterEach(async () => {
  for (const cleanup of cleanups.splice(0).reverse()) await cleanup();
});

async function servedWithProfile() {
  const served = await serveBuilt();
  const { profile, remove } = makeProfile();
  cleanups.push(remove, served.close);
  return { served, profile };
}

test('after one visit a new browser opens the app with the server gone, isolated as before', async () => {
  const { served, profile } = await servedWithProfile();
  const first = await launch({ profile });
  const foreign = collectForeignRequests(first, served.url);
  const visit = await first.newPage();
  await visit.goto(served.url);
  await visit.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await first.close();
  await served.close();

  const second = await launch({ profile });
  cleanups.push(() => second.close());
  const foreignLater = collectForeignRequests(second, served.url);
  const page = await second.newPage();
  const failed: string[] = [];
  page.on('requestfailed', (request) => failed.push(request.url()));
  page.on('pageerror', (error) => failed.push(String(error)));
  // What the content security policy refuses is said here and nowhere else.
  page.on('console', (message) => {
    if (message.type() === 'error') failed.push(message.text());
  });
  await page.goto(served.url);
  await expect.poll(() => page.locator('#app > *').count()).toBeGreaterThan(0);
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  expect(failed).toEqual([]);
  expect([...foreign, ...foreignLater]).toEqual([]);

  await page.goto(`${served.url}no/such/page`);
  expect(await page.title()).toBe('Sumstitch');
});

test('every file that was built can be had offline', async () => {
  const { served, profile } = await servedWithProfile();
  const context = await launch({ profile });
  cleanups.push(() => context.close());
  const page = await context.newPage();
  await page.goto(served.url);
  const kept = await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    const [name = ''] = await caches.keys();
    const requests = await (await caches.open(name)).keys();
    return requests.map((request) => new URL(request.url).pathname.slice(1)).sort();
  });
  expect(kept).toEqual(builtFiles().filter((file) => file !== 'service-worker.js'));
});

function builtFiles(): readonly string[] {
  return readdirSync(builtFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(builtFolder, join(entry.parentPath, entry.name)))
    .sort();
}
