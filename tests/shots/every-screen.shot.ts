import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { launch, serveBuilt } from '../journeys/browser';
import { closeDevices } from '../journeys/device';
import { type Look, tourBoat, tourHome, tourTrouble } from '../journeys/tour';
import { tourWeek } from '../journeys/tour-week';

const folder = join(import.meta.dirname, '../../shots');
const sizes = [
  { width: 1280, height: 800 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
] as const;

let taken = 0;
beforeAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(closeDevices);
afterAll(() => process.stdout.write(`${taken} pictures are in ${folder}\n`));

const look: Look = async ({ page }, name) => {
  for (const size of sizes) {
    await page.setViewportSize(size);
    await picture(page, name, size);
  }
  await page.setViewportSize(sizes[0]);
};

async function picture(
  page: Parameters<Look>[0]['page'],
  name: string,
  { width, height }: (typeof sizes)[number],
): Promise<void> {
  const into = join(folder, `${width}x${height}`);
  mkdirSync(into, { recursive: true });
  // Long enough for stitches to have come in and for fonts to stand.
  await page.waitForTimeout(name.includes('piece') ? 1800 : 150);
  const isParents = await page.evaluate(() => document.querySelector('.parent') !== null);
  await page.screenshot({ path: join(into, `${name}.png`), fullPage: isParents });
  taken += 1;
}

test('every screen at home', () => tourHome(look));
test('every screen on the boat', () => tourBoat(look));
test('a week of short sheets', () => tourWeek(look));
test('where nothing can be kept', () => tourTrouble(look));

test('at an insecure address', async () => {
  const served = await serveBuilt();
  const context = await launch({ flags: ['--host-resolver-rules=MAP boat.example 127.0.0.1'] });
  const page = await context.newPage();
  await page.goto(`http://boat.example:${served.port}/`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  for (const size of sizes) {
    await page.setViewportSize(size);
    await picture(page, 'insecure', size);
  }
  await context.close();
  await served.close();
  expect(taken).toBeGreaterThan(180);
});
