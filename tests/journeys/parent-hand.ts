import { expect } from 'vitest';
import type { Page } from './browser';

export const pin = '4826';

/** Presses a button by its name: with a finger where there is one, else with the mouse. */
export async function press(page: Page, name: string | RegExp, nth = 0): Promise<void> {
  const button = page
    .getByRole('button', typeof name === 'string' ? { name, exact: true } : { name })
    .nth(nth);
  // A child's button takes no press that may have been meant for the screen before.
  if (await button.evaluate((element) => element.matches('.big, .plain'))) await page.waitForTimeout(450);
  await button.click();
}

/** The heading of the screen that is up. */
export async function heading(page: Page): Promise<string> {
  return (await page.locator('h1').first().textContent()) ?? '';
}

/** Waits for a screen by its heading; says which one is there instead. */
export async function seeHeading(page: Page, text: string | RegExp): Promise<void> {
  const wanted = page.getByRole('heading', { level: 1, name: text });
  await wanted.waitFor({ state: 'attached' }).catch(async (error: unknown) => {
    const seen = await page.locator('h1').allTextContents();
    throw new Error(`The screen is “${seen.join(', ')}”, not “${text}”.`, { cause: error });
  });
}

export async function fill(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).first().fill(text);
}

/** From the welcome through PIN and recovery code to the first child's step; gives the recovery code. */
export async function choosePin(page: Page): Promise<string> {
  await press(page, 'Begin');
  await seeHeading(page, 'Before you begin');
  await press(page, 'Go on');
  await fill(page, 'New PIN', pin);
  await fill(page, 'The same PIN again', pin);
  await press(page, 'Go on');
  await seeHeading(page, 'Write this down');
  const code = (await page.locator('.code-shown').textContent()) ?? '';
  await page.getByLabel('I have written it down').check();
  await press(page, 'Go on');
  await seeHeading(page, 'A child');
  return code;
}

/** A child's name and set, from the child's step of set-up to its end; nothing ticked as known. */
export async function addChild(page: Page, name: string, set: RegExp = /^Times 3/): Promise<void> {
  await fill(page, 'Name', name);
  await press(page, 'Go on');
  await seeHeading(page, 'What is known already?');
  await press(page, 'Go on');
  await seeHeading(page, 'The first set');
  await page.getByLabel('Multiplication', { exact: true }).check();
  await page.getByRole('radio', { name: set }).first().check();
  await press(page, /^Start with/);
  await seeHeading(page, `${name} can begin`);
}

/** A new household with its children; the device is in the first one's hands. */
export async function setUp(page: Page, ...names: readonly [string, ...string[]]): Promise<string> {
  const code = await choosePin(page);
  for (const [index, name] of names.entries()) {
    if (index > 0) {
      await press(page, 'Add another child');
      await seeHeading(page, 'A child');
    }
    await addChild(page, name);
  }
  await press(page, 'Go to the parent’s pages');
  await handOver(page, names[0]);
  return code;
}

/** From any child's screen through the gate to Today. */
export async function openPages(page: Page, digits = pin): Promise<void> {
  await press(page, 'Grown-ups');
  await fill(page, 'PIN', digits);
  await press(page, 'Open');
  await page.getByRole('button', { name: 'Lock', exact: true }).waitFor();
}

export async function turnTo(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name, exact: true }).click();
  await page.locator('main.page h1').waitFor();
}

/** The settings of one of several children. */
export async function turnToSettingsOf(page: Page, name: string): Promise<void> {
  await turnTo(page, 'Settings');
  await page.getByRole('navigation', { name: 'Child' }).getByRole('button', { name }).click();
  await page.getByRole('heading', { level: 2, name: `For ${name}` }).waitFor();
}

/** Gives the device to a child from Today. */
export async function handOver(page: Page, name: string): Promise<void> {
  await turnTo(page, 'Today');
  await press(page, `Hand over to ${name}`);
  await page.locator('main.screen').waitFor();
}

/** Numbers on the settings page, kept; the child's tab first where there are several. */
export async function setNumbers(page: Page, numbers: Readonly<Record<string, string>>): Promise<void> {
  await turnTo(page, 'Settings');
  for (const [label, text] of Object.entries(numbers)) await fill(page, label, text);
  await press(page, 'Keep these numbers');
  await expect.poll(() => page.getByRole('status').allTextContents()).toContain('Kept.');
}

/** Turns one of the child's choices on the settings page. */
export async function choose(page: Page, legend: string, option: string): Promise<void> {
  await turnTo(page, 'Settings');
  const group = page.getByRole('group', { name: legend, exact: true });
  // Kept when it is recorded, which the tick itself may run ahead of.
  await group.getByLabel(option, { exact: true }).click();
  await expect.poll(() => group.getByLabel(option, { exact: true }).isChecked()).toBe(true);
  await page.waitForTimeout(50);
}
