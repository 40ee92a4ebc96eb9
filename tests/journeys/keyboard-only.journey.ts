import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import type { Page } from './browser';
import { keyHand, sit } from './child-hand';
import { closeDevices, type Device, expectQuiet, openDevice } from './device';
import { pin, seeHeading } from './parent-hand';
import { storedSats } from './stored';

afterEach(closeDevices);

test('a parent sets up and a child begins with no hand on mouse or screen', async () => {
  const device = await openDevice();
  const { page } = device;
  await go(page, 'Begin');
  await seeHeading(page, 'Before you begin');
  await go(page, 'Go on');
  await type(page, 'New PIN', pin);
  await type(page, 'The same PIN again', pin);
  await page.keyboard.press('Enter');
  await seeHeading(page, 'Write this down');
  await tabTo(page, 'I have written it down');
  await page.keyboard.press('Space');
  await go(page, 'Go on');
  await type(page, 'Name', 'Wren');
  await page.keyboard.press('Enter');
  await seeHeading(page, 'What is known already?');

  // The grid is one stop of the Tab key; arrows walk in it and the space bar marks.
  await tabTo(page, /^0 [+] 0\b.*, not known$/);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  expect(await named(page)).toMatch(/^1 [+] 1\b.*, known$/);
  await page.keyboard.press('Home');
  await page.keyboard.press('Space');
  await page.getByText(/1\d of 100 facts/).waitFor();
  await go(page, 'Go on');

  await seeHeading(page, 'The first set');
  await go(page, /^Start with/);
  await seeHeading(page, 'Wren can begin');
  await go(page, 'Hand over to Wren');
  await seeHeading(page, words.told);
  await go(page, words.ok);
  await seeHeading(page, words.waitsForDone);
  await goThrough(device, words.begin);
  await seeHeading(page, words.firstTry);
  await goThrough(device, words.begin);
  await seeHeading(page, words.yours);
  await go(page, words.goOn);
  await seeHeading(page, words.choice);
  await goThrough(device, words.straight);
  await seeHeading(page, words.piece);
  await go(page, words.goOn);
  await seeHeading(page, words.waitsForDone);
  await goThrough(device, words.begin);
  await seeHeading(page, words.piece);
  await go(page, words.goOn);
  await seeHeading(page, words.resting);
  expect((await storedSats(page)).map(({ purpose }) => purpose)).toEqual([
    'practice',
    'firstTry',
    'sheet',
    'practice',
  ]);

  await go(page, 'Grown-ups');
  await type(page, 'PIN', pin);
  await page.keyboard.press('Enter');
  await page.getByRole('navigation', { name: 'Pages' }).waitFor();
  await go(page, 'Marking');
  await page.locator('.sheets').waitFor();
  await go(page, /^Wren, /);
  await page.locator('table.answers').waitFor();
  await go(page, 'Lock');
  await seeHeading(page, words.resting);
  expectQuiet(device);
});

/** From a child's screen through the cards behind it. */
async function goThrough(device: Device, name: string): Promise<void> {
  await go(device.page, name);
  await sit(device.page, await keyHand(device));
}

/** Presses Tab until what has this name is reached. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  const seen: string[] = [];
  for (let stops = 0; stops < 60; stops += 1) {
    const here = await named(page);
    if (typeof name === 'string' ? here === name : name.test(here)) return;
    seen.push(here);
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not come to ${name}, only to: ${seen.join(' | ')}`);
}

async function go(page: Page, name: string | RegExp): Promise<void> {
  const button = page.getByRole('button', { name }).first();
  // A child's button takes no press that may have been meant for the screen before.
  if (await button.evaluate((element) => element.matches('.big, .plain'))) await page.waitForTimeout(450);
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}

async function type(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).waitFor();
  await tabTo(page, label);
  await page.keyboard.type(text);
}

/** The name of what has the focus, as it is heard. */
function named(page: Page): Promise<string> {
  return page.evaluate(() => {
    const here = document.activeElement;
    if (!here || here === document.body) return '';
    const label = here instanceof HTMLInputElement ? here.labels?.[0]?.textContent : null;
    return (here.getAttribute('aria-label') ?? label ?? here.textContent ?? '').trim();
  });
}
