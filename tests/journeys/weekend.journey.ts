import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import { keyHand, sit } from './child-hand';
import { closeDevices, expectQuiet, openDevice } from './device';
import { beginSheet, finishDay } from './morning';
import { handOver, openPages, press, seeHeading, setUp, turnTo } from './parent-hand';
import { storedSats } from './stored';

afterEach(closeDevices);

const saturday = 4;

test('a family that starts on a Saturday begins at once, gap lines and all; Sunday is free, and a sheet is there for the asking', async () => {
  const first = await openDevice({ daysOn: saturday });
  const hand = async () => keyHand(first);
  await setUp(first.page, 'Wren');
  await seeHeading(first.page, words.told);
  await openPages(first.page);
  await turnTo(first.page, 'Settings');
  const lines = first.page.getByLabel(/^End the day with a gap line/);
  await lines.click();
  await expect.poll(() => lines.isChecked()).toBe(true);
  await handOver(first.page, 'Wren');
  await beginSheet(first.page, hand);
  await sit(first.page, await hand());
  expect(await finishDay(first.page, hand)).toContain(words.lines);
  const sat = (await storedSats(first.page)).find(({ purpose }) => purpose === 'lines');
  expect(sat?.ended).toBe('finished');
  expect(sat?.visits.length).toBe(sat?.prompts.length);
  expectQuiet(first);
  await first.close();

  const sunday = await openDevice({ again: first, daysOn: saturday + 1 });
  await seeHeading(sunday.page, words.free);
  await press(sunday.page, words.aSheet);
  await sit(sunday.page, await keyHand(sunday));
  await seeHeading(sunday.page, words.piece);
  await sunday.close();

  const next = await openDevice({ again: first, daysOn: saturday + 7 });
  await seeHeading(next.page, words.free);
  await openPages(next.page);
  await next.page.getByText('Only today …').click();
  await press(next.page, 'School today');
  await next.page.getByRole('button', { name: 'Undo: School today.' }).waitFor();
  await handOver(next.page, 'Wren');
  await seeHeading(next.page, words.choice);
  expectQuiet(next);
});
