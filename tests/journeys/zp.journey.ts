import { mkdirSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { launch, serveBuilt } from './browser';
import { closeDevices, openDevice } from './device';
import { choosePin, fill, handOver, heading, openPages, press, seeHeading, turnTo } from './parent-hand';

afterEach(closeDevices);
const sizes = [
  { width: 1280, height: 800 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
];
mkdirSync('/tmp/pp/shots', { recursive: true });
async function shot(page: any, name: string) {
  for (const size of sizes) {
    await page.setViewportSize(size);
    await page.waitForTimeout(120);
    await page.screenshot({ path: `/tmp/pp/shots/${name}-${size.width}.png`, fullPage: true });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (over > 0) console.log('OVERFLOW', name, size.width, over);
  }
  await page.setViewportSize(sizes[0]);
}
test('home', async () => {
  const device = await openDevice();
  const { page } = device;
  await press(page, 'Begin');
  await shot(page, 's1');
  await press(page, 'Go on');
  await fill(page, 'New PIN', '1234');
  await fill(page, 'The same PIN again', '1235');
  await press(page, 'Go on');
  await shot(page, 's2');
  await page.reload();
  await choosePin(page);
  await shot(page, 's4');
  await fill(page, 'Name', 'Wren');
  await press(page, 'Go on');
  await page.getByRole('button', { name: '7 + 0 = 7, not known' }).click();
  await shot(page, 's5');
  await page.getByRole('radio', { name: /^It asks Wren/ }).click();
  await shot(page, 's5b');
  await press(page, 'Go on');
  await seeHeading(page, 'Wren can begin');
  await shot(page, 's7');
  await press(page, 'Add another child');
  await fill(page, 'Name', 'Teo');
  await press(page, 'Go on');
  await page.reload();
  await openPages(page);
  console.log(await heading(page));
  await shot(page, 'today-spread');
}, 120000);
test('boat', async () => {
  const device = await openDevice();
  const { page } = device;
  await press(page, 'Look round the boat');
  await page.getByRole('button', { name: /Juniper/ }).waitFor();
  await press(page, /Teo/);
  await press(page, 'Grown-ups');
  await seeHeading(page, /^Today/);
  await page.waitForTimeout(1500);
  await shot(page, 'boat-today');
  for (const name of ['Marking', 'Children and sets', 'Sittings', 'Settings', 'About']) {
    await turnTo(page, name);
    await shot(page, `boat-${name.split(' ')[0]}`);
  }
  await turnTo(page, 'Marking');
  await page.setViewportSize(sizes[2]!);
  await page.getByRole('button', { name: /^Pages/ }).click();
  await page.screenshot({ path: '/tmp/pp/shots/menu-390.png' });
  await page.keyboard.press('Escape');
  await page.setViewportSize(sizes[0]!);
  await page.locator('.sheets button.link').first().click();
  await page.waitForTimeout(500);
  await shot(page, 'boat-sitting');
}, 120000);
