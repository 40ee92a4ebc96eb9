import { afterEach, beforeEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import type { DayChange, DayChanged } from '../../src/core/record/household-record';
import { keyHand, nextCard, sit } from './child-hand';
import { closeDevices, type Device, expectQuiet, openDevice, reload } from './device';
import { beginSheet, finishDay, goTo } from './morning';
import {
  addChild,
  choose,
  choosePin,
  fill,
  handOver,
  heading,
  openPages,
  pin,
  press,
  seeHeading,
  setUp,
  turnTo,
} from './parent-hand';
import { readStored, storedSats } from './stored';

let device: Device;
beforeEach(async () => {
  device = await openDevice();
});
afterEach(async () => {
  expectQuiet(device);
  await closeDevices();
});

/** Reloads, and finds the same screen. */
async function reloadOn(title: string | RegExp): Promise<void> {
  await seeHeading(device.page, title);
  await reload(device.page);
  await seeHeading(device.page, title);
}

/** The piece does not wait for the disk; a reload that is to find the next step does. */
async function untilSealed(): Promise<void> {
  const isOpen = (key: string) => key.startsWith('journal/');
  await expect.poll(async () => Object.keys(await readStored(device.page)).some(isOpen)).toBe(false);
}

/** Nor does what the child chose. */
async function untilStored(isChosen: (change: DayChange) => boolean | undefined): Promise<void> {
  const isIt = (value: unknown) => {
    const record = value as Partial<DayChanged> | null;
    return record?.kind === 'dayChanged' && record.change !== undefined && isChosen(record.change) === true;
  };
  await expect.poll(async () => Object.values(await readStored(device.page)).some(isIt)).toBe(true);
}

/** Reloads in mid-sitting, and takes up the same card. */
async function reloadInCard(): Promise<void> {
  const { page } = device;
  const before = await nextCard(page, null);
  await reload(page);
  await seeHeading(page, words.away);
  await reloadOn(words.away);
  await press(page, 'Carry on');
  expect((await nextCard(page, null))?.text).toBe(before?.text);
}

test('a child comes back to the same step, wherever the page was reloaded', async () => {
  const { page } = device;
  await setUp(page, 'Wren');
  await reloadOn(words.told);
  await press(page, 'OK');
  await seeHeading(page, words.waitsForDone);
  await press(page, 'Begin');
  const hand = async () => keyHand(device);
  await sit(page, await hand(), { until: 2 });
  await reloadInCard();
  await sit(page, await hand());

  await reloadOn(words.firstTry);
  await press(page, 'Begin');
  await sit(page, await hand(), { until: 4 });
  await reloadInCard();
  await sit(page, await hand());
  await untilSealed();
  await reloadOn(words.yours);
  await press(page, words.goOn);
  await untilStored(({ heard }) => heard);
  await reloadOn(words.choice);
  await press(page, words.straight);
  await sit(page, await hand(), { until: 10 });
  await reloadInCard();
  const missed = new Set<string>();
  await sit(page, await hand(), {
    does({ text }) {
      if (missed.has(text) || missed.size === 3) return 'right';
      missed.add(text);
      return 'wrong';
    },
  });

  await seeHeading(page, words.piece);
  await untilSealed();
  await reload(page);
  await reloadOn(/^Mend/);
  await press(page, 'Begin');
  await sit(page, await hand(), { until: 1 });
  await reloadInCard();
  await sit(page, await hand());
  await reloadOn(words.twin);
  await press(page, 'Begin');
  await sit(page, await hand(), { until: 1 });
  await reloadInCard();
  await sit(page, await hand());
  await reloadOn(words.waitsForDone);
  await press(page, 'Begin');
  await sit(page, await hand(), { until: 2 });
  await reloadInCard();
  await sit(page, await hand());
  await seeHeading(page, words.piece);
  await untilSealed();
  await reload(page);
  await reloadOn(words.resting);

  const sats = await storedSats(page);
  expect(sats.map(({ purpose }) => purpose)).toEqual([
    'practice',
    'firstTry',
    'sheet',
    'mending',
    'mending',
    'practice',
  ]);
  expect(sats[2]?.visits.filter(({ end }) => end === 'taken')).toHaveLength(25);
});

test('in a card round too, and a round done does not come again', async () => {
  const { page } = device;
  await setUp(page, 'Wren');
  const hand = async () => keyHand(device);
  await goTo(page, hand, words.firstTry);
  await press(page, 'Begin');
  await sit(page, await hand(), { does: (_, nth) => (nth < 3 ? 'wrong' : 'right') });
  await goTo(page, hand, words.cards);
  await reloadOn(words.cards);
  await press(page, 'Begin');
  await sit(page, await hand(), { until: 2 });
  await reloadInCard();
  await sit(page, await hand());
  await reloadOn(words.sheet);
  expect((await storedSats(page)).map(({ purpose }) => purpose)).toEqual(['practice', 'firstTry', 'cards']);
});

test('in mid-row too, and a row done is not asked again', async () => {
  const { page } = device;
  await setUp(page, 'Wren');
  await openPages(page);
  await choose(page, 'Sheets are sat', 'with a clock');
  await handOver(page, 'Wren');
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device), {
    takesItself: true,
    atMs: ({ seenMs }, nth) => seenMs + (nth < 12 ? 1000 : 60_000),
  });
  await press(page, 'Go on');
  await reloadOn(words.row);
  await press(page, 'Begin');
  await sit(page, await keyHand(device), { until: 2 });
  await reloadInCard();
  await sit(page, await keyHand(device));
  await untilSealed();
  await reload(page);
  const titles = await finishDay(page, () => keyHand(device));
  expect(titles).not.toContain(words.row);
  await reloadOn(words.resting);
  expect((await storedSats(page)).filter(({ purpose }) => purpose === 'row')).toHaveLength(1);
});

test('an interrupted timed sheet goes on without its clock and has no band unless the parent says so', async () => {
  const { page } = device;
  await setUp(page, 'Wren');
  await openPages(page);
  await choose(page, 'Sheets are sat', 'with a clock');
  await handOver(page, 'Wren');
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device), { takesItself: true, until: 5 });
  await reload(page);
  await press(page, 'Carry on');
  expect(await page.locator('.thread-run').count()).toBe(0);
  await sit(page, await keyHand(device), { takesItself: true });
  await seeHeading(page, words.piece);
  await openPages(page);
  await page.getByText('The sheet was interrupted, so it has no band').waitFor();
  await press(page, 'Give it its band');
  await page.getByText(/Firm: 2[0-5] right by the bell/).waitFor();
});

test('set-up leaves nothing half-stored, and begins where it was with a child', async () => {
  const { page } = device;
  await press(page, 'Begin');
  await press(page, 'Go on');
  await fill(page, 'New PIN', pin);
  await fill(page, 'The same PIN again', pin);
  await press(page, 'Go on');
  await seeHeading(page, 'Write this down');
  await reload(page);
  await seeHeading(page, 'Sumstitch');
  expect(Object.keys(await readStored(page)).sort()).toEqual(['meta/device', 'meta/head']);

  await choosePin(page);
  await reload(page);
  await press(page, 'Begin');
  await seeHeading(page, 'For grown-ups');
  await fill(page, 'PIN', pin);
  await press(page, 'Open');
  await seeHeading(page, 'A child');
  await fill(page, 'Name', 'Wren');
  await press(page, 'Go on');
  await seeHeading(page, 'What is known already?');
  await reload(page);
  await seeHeading(page, words.app);
  expect(Object.keys(await readStored(page)).filter((key) => key.startsWith('home/'))).toEqual([]);
  await press(page, 'Begin');
  await fill(page, 'PIN', pin);
  await press(page, 'Open');
  await seeHeading(page, 'A child');
  await addChild(page, 'Wren');
  await reload(page);
  await seeHeading(page, words.whose);
  await press(page, 'Wren');
  await seeHeading(page, words.told);
});

test('a parent’s page is locked by a reload, and the child is where it was', async () => {
  const { page } = device;
  await choosePin(page);
  await addChild(page, 'Wren');
  await press(page, 'Hand over to Wren');
  await openPages(page);
  await turnTo(page, 'Settings');
  await reload(page);
  expect(await heading(page)).toBe(words.told);
  await press(page, 'Grown-ups');
  await seeHeading(page, 'For grown-ups');
  expect(await page.getByRole('navigation').count()).toBe(0);
});
