import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import type { Page } from './browser';
import { keyHand, sit } from './child-hand';
import { closeDevices, type Device, expectQuiet, openDevice, settle } from './device';
import { beginSheet, goTo } from './morning';
import { openPages, press, seeHeading, setUp } from './parent-hand';
import { storedSats, storedVisits } from './stored';

afterEach(closeDevices);

async function second({ context, served }: Device): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.url);
  await settle(page);
  return page;
}

test('two windows: a sheet is sat in one of them, frozen or not, and neither loses an answer', async () => {
  const device = await openDevice();
  const { page, cdp, context } = device;
  await setUp(page, 'Wren');
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device), { until: 5 });
  await expect.poll(async () => (await storedVisits(page)).length).toBe(5);

  const other = await second(device);
  await seeHeading(other, words.elsewhere);
  expect(await other.getByRole('button', { name: words.sitHere }).count()).toBe(0);
  // The parent's pages need no seat.
  await openPages(other);
  await press(other, 'Lock');
  await cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
  await press(other, words.sitHere);
  await seeHeading(other, words.away);
  await press(other, words.carryOn);
  const hand = await keyHand({ page: other, cdp: await context.newCDPSession(other) });
  await sit(other, hand, { until: 2 });

  await cdp.send('Page.setWebLifecycleState', { state: 'active' });
  await seeHeading(page, words.elsewhere);
  await sit(other, hand);
  await seeHeading(other, words.piece);
  await expect
    .poll(async () => (await storedSats(other)).filter(({ purpose }) => purpose === 'sheet').length)
    .toBe(1);
  const sheet = (await storedSats(other)).find(({ purpose }) => purpose === 'sheet');
  const places = sheet?.visits.filter(({ end }) => end === 'taken').map(({ place }) => place);
  expect(places).toEqual(Array.from({ length: 25 }, (_, place) => place));

  // The window that was left takes over where the other is closed, with the day as it is now.
  await other.close();
  await goTo(page, () => keyHand(device), words.resting);
  expectQuiet(device);
});
