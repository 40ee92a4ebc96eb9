import { afterEach, describe, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import { keyHand, nextCard, sit } from './child-hand';
import { closeDevices, expectQuiet, openDevice, reload } from './device';
import { setFull, withDisk } from './full-disk';
import { beginSheet, finishDay, goTo } from './morning';
import {
  addChild,
  choose,
  choosePin,
  fill,
  openPages,
  pin,
  press,
  seeHeading,
  setUp,
  turnTo,
} from './parent-hand';
import { putStored, readStored, storedSats, storedVisits } from './stored';

afterEach(closeDevices);

describe('what a parent mistypes gets a plain sentence and stays where it was typed', () => {
  test('at the first set-up', async () => {
    const device = await openDevice();
    const { page } = device;
    await press(page, 'Begin');
    await press(page, 'Go on');
    for (const [typed, sentence] of [
      ['', 'Type the PIN first.'],
      ['12ab', 'A PIN has only digits, 0 to 9.'],
      ['123', 'A PIN has at least 4 digits.'],
      ['123456789', 'A PIN has at most 8 digits.'],
    ] as const) {
      await fill(page, 'New PIN', typed);
      await fill(page, 'The same PIN again', typed);
      await press(page, 'Go on');
      await page.getByText(sentence).first().waitFor();
      expect(await page.getByLabel('New PIN', { exact: true }).inputValue()).toBe(typed);
    }
    await reload(page);
    await choosePin(page);
    await press(page, 'Go on');
    await page.getByText('Every child needs a name.').waitFor();
    await addChild(page, 'Wren');
    await press(page, 'Add another child');
    await fill(page, 'Name', ' wren ');
    await press(page, 'Go on');
    await page.getByText('There is a child with this name already.').waitFor();
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe(' wren ');
    expectQuiet(device);
  });

  test('on the pages: a set with no facts, an allowance of no seconds', async () => {
    const device = await openDevice();
    const { page } = device;
    await setUp(page, 'Wren');
    await openPages(page);
    await turnTo(page, 'Children and sets');
    await press(page, 'Make a set');
    await fill(page, 'Name of the set', 'The hard ones');
    await press(page, 'Keep this set');
    await page.getByText('Pick the facts of the set on the grid.').waitFor();
    await turnTo(page, 'Settings');
    await fill(page, 'Time allowed with the clock', '0');
    await press(page, 'Keep these numbers');
    await page.getByText('With 0 seconds nothing could be answered.').waitFor();
    expect(await page.getByLabel('Time allowed with the clock', { exact: true }).inputValue()).toBe('0');
    expectQuiet(device);
  });
});

test('a browser that refuses its storage is told of in a plain sentence, before anything begins', async () => {
  const { page } = await openDevice({
    isWorkerless: true,
    before: (context) =>
      context.addInitScript(() => {
        indexedDB.open = () => {
          throw new DOMException('no', 'SecurityError');
        };
      }),
  });
  await seeHeading(page, 'Nothing can be kept here yet');
  expect(await page.getByRole('alert').textContent()).toContain('stores nothing for this page');
});

test('on a full disk a child goes on, a grown-up is fetched, and every answer is stored once there is room', async () => {
  const device = await openDevice({ before: withDisk });
  const { page } = device;
  await setUp(page, 'Wren');
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device), { until: 3 });
  await expect.poll(async () => (await storedVisits(page)).length).toBe(3);

  await setFull(page, true);
  await sit(page, await keyHand(device));
  await seeHeading(page, words.piece);
  await page.getByText('Please fetch a grown-up').waitFor();
  expect(await storedVisits(page)).toHaveLength(3);
  await finishDay(page, () => keyHand(device));
  await press(page, 'Grown-ups');
  await fill(page, 'PIN', pin);
  await press(page, 'Open');
  // No try can be counted, so this one has its minute to wait.
  await page.getByText('This one is looked at in a minute').waitFor();
  await press(page, 'Back to the cloth');

  await setFull(page, false);
  await expect
    .poll(async () => (await storedSats(page)).map(({ purpose }) => purpose))
    .toEqual(['practice', 'firstTry', 'sheet', 'practice']);
  expect((await storedSats(page))[2]?.visits).toHaveLength(25);
  await page.getByText('Please fetch a grown-up').waitFor({ state: 'detached' });
  expectQuiet(device);
});

test('what could not be stored of the parent’s is still on the page, with the reason', async () => {
  const { page } = await openDevice({ before: withDisk });
  await choosePin(page);
  await setFull(page, true);
  await fill(page, 'Name', 'Wren');
  await press(page, 'Go on');
  await seeHeading(page, 'What is known already?');
  await press(page, 'Go on');
  await page
    .getByRole('radio', { name: /^Doubles/ })
    .first()
    .click();
  await press(page, 'Start with “Doubles”');
  await page.getByText('This device has no room left').waitFor();
  await setFull(page, false);
  await press(page, 'Start with “Doubles”');
  await seeHeading(page, 'Wren can begin');
});

test('a record of a later version is told of on the parent’s pages, and stays as it is', async () => {
  const device = await openDevice();
  const { page } = device;
  await setUp(page, 'Wren');
  const key = 'home/000000000900-slate-x-1';
  const later = { id: 'x-1', v: 7, seq: 900, device: 'slate', at: 0, kind: 'songSung', verses: 3 };
  await putStored(page, key, later);
  await reload(page);
  await openPages(page);
  await page.getByText('One record was made by a newer version of Sumstitch.').waitFor();
  await choose(page, 'The clock, when there is one, is', 'hidden until the bell');
  await expect
    .poll(async () => Object.keys(await readStored(page)).filter((at) => at.startsWith('home/')).length)
    .toBe(4);
  expect((await readStored(page))[key]).toEqual(later);
  expectQuiet(device);
});

test('with the device’s date set back a year the child goes on, and every record keeps its place', async () => {
  const first = await openDevice();
  await setUp(first.page, 'Wren');
  await goTo(first.page, () => keyHand(first), words.choice);
  await first.close();

  const back = await openDevice({ again: first, daysOn: -365 });
  const { page } = back;
  await beginSheet(page, () => keyHand(back));
  await sit(page, await keyHand(back));
  await seeHeading(page, words.piece);
  await finishDay(page, () => keyHand(back));
  await openPages(page);
  await turnTo(page, 'Sittings');
  expect(await page.locator('tbody tr').count()).toBe(4);
  await choose(page, 'Sheets are sat', 'with a clock');
  const sats = await storedSats(page);
  expect(sats.map(({ purpose }) => purpose)).toEqual(['practice', 'firstTry', 'practice', 'sheet']);
  for (const later of sats.slice(2)) expect(later.startedAt).toBeLessThan(sats[0]?.startedAt ?? 0);
  await back.close();

  // The change made under the wrong date is the latest all the same: order is not the wall clock's.
  const again = await openDevice({ again: first });
  await goTo(again.page, () => keyHand(again), words.takesItself);
});

test('a wrong PIN is refused, three make a wait, and the recovery code passes it', async () => {
  const { page } = await openDevice();
  const code = await setUp(page, 'Wren');
  await press(page, 'Grown-ups');
  for (const _ of [1, 2, 3]) {
    await fill(page, 'PIN', '0000');
    await press(page, 'Open');
    await expect.poll(() => page.getByLabel('PIN', { exact: true }).inputValue()).toBe('');
    await page
      .getByText('You can try again now.')
      .or(page.getByText(/That was not the PIN/))
      .waitFor();
  }
  expect((await readStored(page))['meta/gate']).toMatchObject({ tries: 3 });
  await press(page, 'Forgot the PIN?');
  await fill(page, 'Recovery code', code.toLowerCase());
  await press(page, 'Use the code');
  await seeHeading(page, 'Choose a new PIN');
  await fill(page, 'New PIN', '135790');
  await fill(page, 'The same PIN again', '135790');
  await press(page, 'Keep this PIN');
  await page.getByRole('button', { name: 'Lock', exact: true }).click();
  await openPages(page, '135790');
  expect(pin).not.toBe('135790');
});

test('a card is still there after a key that means nothing', async () => {
  const device = await openDevice();
  const { page } = device;
  await setUp(page, 'Wren');
  await press(page, 'OK');
  await press(page, 'Begin');
  const card = await nextCard(page, null);
  for (const key of ['a', 'Enter', 'Backspace', 'Escape', '.', '-']) await page.keyboard.press(key);
  expect((await nextCard(page, null))?.id).toBe(card?.id);
  expect(await page.locator('output.answer').textContent()).toBe('');
  expectQuiet(device);
});
