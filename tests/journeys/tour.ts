import { expect } from 'vitest';
import { words } from '../../src/child/words';
import { keyHand, nextCard, sit } from './child-hand';
import { type Device, openDevice, reload } from './device';
import { setFull, withDisk } from './full-disk';
import { beginSheet, finishDay, goTo } from './morning';
import {
  addChild,
  choose,
  choosePin,
  fill,
  handOver,
  openPages,
  pin,
  press,
  seeHeading,
  turnTo,
  turnToSettingsOf,
} from './parent-hand';
import { putStored } from './stored';

/** Called at every screen and state of the app, with a name that is good for a file. */
export type Look = (device: Device, name: string) => Promise<void>;

/** From the first visit to the end of a second day: every screen of both sides, each by the way a person comes to it. */
export async function tourHome(look: Look): Promise<void> {
  const first = await openDevice();
  const code = await seeSetUp(first, look);
  await seeFirstDay(first, look);
  await seeGate(first, look, code);
  await first.close();
  const second = await openDevice({ again: first, daysOn: 1 });
  await seeTimedDay(second, look);
  await seeNotices(second, look);
  await second.close();
}

/** Gives the recovery code. */
async function seeSetUp(device: Device, look: Look): Promise<string> {
  const { page } = device;
  await look(device, 'welcome');
  await press(page, 'Begin');
  await seeHeading(page, 'Before you begin');
  await look(device, 'setup-1-storage');
  await press(page, 'Go on');
  await press(page, 'Go on');
  await page.getByText('Type the PIN first.').first().waitFor();
  await look(device, 'setup-2-pin-faulty');
  await reload(page);
  await press(page, 'Begin');
  await press(page, 'Go on');
  await fill(page, 'New PIN', pin);
  await fill(page, 'The same PIN again', pin);
  await press(page, 'Go on');
  await seeHeading(page, 'Write this down');
  await look(device, 'setup-3-code');
  await reload(page);
  const code = await choosePin(page);
  await press(page, 'Go on');
  await page.getByText('Every child needs a name.').waitFor();
  await look(device, 'setup-4-child-faulty');
  await fill(page, 'Name', 'Wren');
  await press(page, 'Go on');
  await seeHeading(page, 'What is known already?');
  await page.getByRole('button', { name: /^Everything with 0 first/ }).click();
  await look(device, 'setup-5-known');
  await press(page, 'Go on');
  await seeHeading(page, 'The first set');
  await look(device, 'setup-6-set');
  await page.getByLabel('Multiplication', { exact: true }).check();
  await page
    .getByRole('radio', { name: /^Times 3/ })
    .first()
    .check();
  await press(page, /^Start with/);
  await look(device, 'setup-7-done');
  await press(page, 'Add another child');
  await addChild(page, 'Teo');
  await press(page, 'Go to the parent’s pages');
  await look(device, 'pages-today-fresh');
  await press(page, 'Hand over: who is next?');
  await seeHeading(page, words.whose);
  await look(device, 'child-whose');
  return code;
}

async function seeFirstDay(device: Device, look: Look): Promise<void> {
  const { page } = device;
  await press(page, 'Wren');
  await seeHeading(page, words.told);
  await look(device, 'child-told');
  await press(page, 'OK');
  await look(device, 'child-practice-by-done');
  await press(page, 'Begin');
  await nextCard(page, null);
  await look(device, 'child-card-copy');
  await sit(page, await keyHand(device));
  await seeHeading(page, words.firstTry);
  await look(device, 'child-next-first-try');
  await press(page, 'Begin');
  await sit(page, await keyHand(device), { does: (_, nth) => (nth < 4 ? 'right' : 'wrong') });
  await seeHeading(page, words.yours);
  await look(device, 'child-yours');
  await press(page, 'Go on');
  await look(device, 'child-next-after-yours');
  await seeHeading(page, words.cards);
  await press(page, 'Begin');
  await nextCard(page, null);
  await look(device, 'child-card-new');
  await sit(page, await keyHand(device), { until: 1 });
  await nextCard(page, null);
  await look(device, 'child-card-known');
  await sit(page, await keyHand(device));
  await beginSheet(page, () => keyHand(device));
  await nextCard(page, null);
  await page.waitForTimeout(300);
  await page.keyboard.type('18');
  await look(device, 'child-card-typed');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await sit(page, await keyHand(device), { until: 4, does: (_, nth) => (nth === 2 ? 'wrong' : 'right') });
  await reload(page);
  await seeHeading(page, words.away);
  await look(device, 'child-away');
  await press(page, 'Carry on');
  await sit(page, await keyHand(device), { does: (_, nth) => (nth < 2 ? 'wrong' : 'right') });
  await seeHeading(page, words.piece);
  await look(device, 'child-piece-with-holes');
  await press(page, 'Mend');
  await nextCard(page, null);
  await look(device, 'child-mending');
  await sit(page, await keyHand(device), { until: 1, does: () => 'wrong' });
  await nextCard(page, null);
  await look(device, 'child-mending-shown');
  await sit(page, await keyHand(device));
  await seeHeading(page, words.twin);
  await look(device, 'child-next-twin');
  await goTo(page, () => keyHand(device), words.piece);
  await look(device, 'child-piece-whole');
  await finishDay(page, () => keyHand(device));
  await look(device, 'child-rest');
  await press(page, 'Long cloth');
  await page.locator('.strip').waitFor();
  await look(device, 'child-long-cloth');
  await press(page, 'Back');
  await press(page, 'Hand over');
  await look(device, 'child-hand-over');
  await press(page, 'Teo');
}

async function seeGate(device: Device, look: Look, code: string): Promise<void> {
  const { page } = device;
  await press(page, 'Grown-ups');
  await seeHeading(page, 'For grown-ups');
  await look(device, 'gate');
  await press(page, 'Open');
  await page.getByText('Type the PIN first.').waitFor();
  await look(device, 'gate-faulty');
  await press(page, 'Forgot the PIN?');
  await look(device, 'gate-recovery');
  await press(page, 'Back to the PIN');
  for (const _ of [1, 2, 3]) {
    await fill(page, 'PIN', '0000');
    await press(page, 'Open');
    await expect.poll(() => page.getByLabel('PIN', { exact: true }).inputValue()).toBe('');
  }
  await page.getByText(/Wait \d seconds/).waitFor();
  await look(device, 'gate-waiting');
  await press(page, 'Forgot the PIN?');
  await fill(page, 'Recovery code', code);
  await press(page, 'Use the code');
  await seeHeading(page, 'Choose a new PIN');
  await look(device, 'gate-new-pin');
  await fill(page, 'New PIN', pin);
  await fill(page, 'The same PIN again', pin);
  await press(page, 'Keep this PIN');
  await page.getByRole('button', { name: 'Lock', exact: true }).waitFor();
  await turnToSettingsOf(page, 'Wren');
  await choose(page, 'Sheets are sat', 'with a clock');
  await choose(page, 'Facts are written', 'one number under the other');
  await handOver(page, 'Wren');
}

async function seeTimedDay(device: Device, look: Look): Promise<void> {
  const { page } = device;
  await goTo(page, () => keyHand(device), words.takesItself);
  await look(device, 'child-practice-by-itself');
  await press(page, 'Begin');
  await sit(page, await keyHand(device), { takesItself: true });
  await seeHeading(page, words.threadSheet);
  await look(device, 'child-next-thread');
  await openPages(page);
  await choose(page, 'The clock, when there is one, is', 'hidden until the bell');
  await handOver(page, 'Wren');
  await look(device, 'child-next-bell');
  await openPages(page);
  await choose(page, 'The clock, when there is one, is', 'seen, as a thread along the hem');
  await handOver(page, 'Wren');
  await press(page, 'Begin');
  await nextCard(page, null);
  await page.waitForTimeout(2000);
  await look(device, 'child-card-thread-stacked');
  // Wherever the looking has brought the thread, these answers fall long after the bell or well before it.
  await sit(page, await keyHand(device), {
    takesItself: true,
    does: (_, nth) => (nth === 1 ? 'wrong' : 'right'),
    atMs: ({ seenMs }, nth) => seenMs + (nth < 4 ? 400 : 90_000),
  });
  await seeHeading(page, words.piece);
  await look(device, 'child-piece-half');
  await press(page, 'Go on');
  await seeHeading(page, words.row);
  await look(device, 'child-next-row');
  await press(page, 'Begin');
  await sit(page, await keyHand(device), { does: () => 'wrong' });
  await press(page, 'Begin');
  await sit(page, await keyHand(device), { does: (_, nth) => (nth === 0 ? 'wrong' : 'right') });
  for (const _ of [1, 2, 3]) {
    if ((await page.locator('h1').first().textContent()) !== words.row) break;
    await press(page, 'Begin');
    await sit(page, await keyHand(device), { does: (_card, nth) => (nth === 0 ? 'wrong' : 'right') });
  }
  await seeHeading(page, /^Mend/);
  await look(device, 'child-next-mending');
}

async function seeNotices(device: Device, look: Look): Promise<void> {
  const { page } = device;
  const later = { id: 'x-1', v: 7, seq: 900, device: 'slate', at: 0, kind: 'songSung', verses: 3 };
  await putStored(page, 'home/000000000900-slate-x-1', later);
  await reload(page);
  await openPages(page);
  await page.getByText('One record was made by a newer version').waitFor();
  await look(device, 'pages-notice-later-record');
  await turnTo(page, 'Settings');
  await press(page, 'Change the PIN');
  await setFaulty(device);
  await look(device, 'pages-settings-faulty');
}

async function setFaulty({ page }: Device): Promise<void> {
  await fill(page, 'Time allowed with the clock', '0');
  await fill(page, 'Length of a sheet', '12');
  await press(page, 'Keep these numbers');
  await page.getByText('With 0 seconds nothing could be answered.').waitFor();
}

/** The demo household, whose eight weeks fill every page of the parent's side. */
export async function tourBoat(look: Look): Promise<void> {
  const device = await openDevice();
  const { page } = device;
  await press(page, words.visit);
  await page.getByRole('button', { name: 'Leave the boat' }).waitFor();
  await seeHeading(page, words.whose);
  await look(device, 'boat-whose');
  await press(page, 'Grown-ups');
  await page.getByRole('button', { name: 'Lock', exact: true }).waitFor();
  await page.locator('main.page section').first().waitFor();
  await seeEveryPage(device, look);
  await turnTo(page, 'Today');
  await page.locator('summary').first().click();
  await look(device, 'boat-today-only');
  await turnTo(page, 'Marking');
  await page.locator('.sheets button').first().click();
  await page.locator('table.answers').first().waitFor();
  await look(device, 'boat-sitting');
  await page.getByLabel('Show every key').first().check();
  await press(page, 'Does not count');
  await page.getByText('The sitting does not count.').waitFor();
  await look(device, 'boat-sitting-ruled');
  await turnTo(page, 'Children and sets');
  for (const summary of await page.locator('summary').all()) await summary.click();
  await press(page, 'Make a set');
  await look(device, 'boat-children-opened');
  await press(page, 'Lock');
  await press(page, 'Juniper');
  await look(device, 'boat-juniper');
  await device.close();
}

/** Whatever pages there are, as they open. */
async function seeEveryPage(device: Device, look: Look): Promise<void> {
  const { page } = device;
  const names = await page.getByRole('navigation', { name: 'Pages' }).getByRole('button').allTextContents();
  for (const name of names) {
    await turnTo(page, name);
    await page.getByText('Reading the sittings …').waitFor({ state: 'detached' });
    await look(device, `boat-page-${name.toLowerCase().replaceAll(' ', '-')}`);
  }
}

/** What is shown where nothing can be kept, or nothing more. */
export async function tourTrouble(look: Look): Promise<void> {
  const device = await openDevice({
    isWorkerless: true,
    before: (context) =>
      context.addInitScript(() => {
        indexedDB.open = () => {
          throw new DOMException('no', 'SecurityError');
        };
      }),
  });
  await seeHeading(device.page, 'Nothing can be kept here yet');
  await look(device, 'trouble');
  await device.close();

  const full = await openDevice({ before: withDisk });
  await choosePin(full.page);
  await setFull(full.page, true);
  await fill(full.page, 'Name', 'Wren');
  await press(full.page, 'Go on');
  await seeHeading(full.page, 'What is known already?');
  await press(full.page, 'Go on');
  await press(full.page, /^Start with/);
  await full.page.getByText('This device has no room left').waitFor();
  await look(full, 'setup-full-disk');
  await setFull(full.page, false);
  await press(full.page, /^Start with/);
  await seeHeading(full.page, 'Wren can begin');
  await setFull(full.page, true);
  await press(full.page, 'Hand over to Wren');
  await full.page.getByText('Please fetch a grown-up').waitFor();
  await look(full, 'child-fetch-grown-up');
  await full.close();
}
