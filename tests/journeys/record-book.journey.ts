import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import type { Page } from './browser';
import { keyHand, sit } from './child-hand';
import { closeDevices, expectQuiet, openDevice } from './device';
import { beginSheet, finishDay } from './morning';
import { fill, openPages, press, seeHeading, setUp, turnTo } from './parent-hand';

afterEach(closeDevices);

const otherPin = '90210';

test('a day goes out in one tap, and into an empty browser with a PIN of its own; the same file again changes nothing', async () => {
  const here = await openDevice();
  await setUp(here.page, 'Wren');
  await beginSheet(here.page, () => keyHand(here));
  await sit(here.page, await keyHand(here), { does: (_, nth) => (nth === 3 ? 'wrong' : 'right') });
  await finishDay(here.page, () => keyHand(here));
  await openPages(here.page);
  await turnTo(here.page, 'Record book');
  const saving = here.page.waitForEvent('download');
  await press(here.page, 'Make a backup');
  const download = await saving;
  const file = join(tmpdir(), `${Date.now()}-${download.suggestedFilename()}`);
  await download.saveAs(file);
  const before = await read(here.page);
  expectQuiet(here);

  const there = await openDevice();
  await press(there.page, words.restore);
  await seeHeading(there.page, 'Restore from a file');
  await choose(there.page, file);
  await there.page.getByText(/^Wren is not on this device yet/).waitFor();
  await press(there.page, /^Bring in \d+ records$/);
  await fill(there.page, 'New PIN', otherPin);
  await fill(there.page, 'The same PIN again', otherPin);
  await press(there.page, 'Go on');
  await seeHeading(there.page, 'Write this down');
  await there.page.getByLabel('I have written it down').check();
  await press(there.page, 'Go on');
  await there.page.getByRole('button', { name: 'Lock', exact: true }).waitFor();
  expect(await read(there.page)).toEqual(before);

  await turnTo(there.page, 'Record book');
  await choose(there.page, file);
  await there.page.getByText('Everything in it is here already.').waitFor();
  await press(there.page, 'Leave it');
  const torn = join(tmpdir(), `${Date.now()}-torn.json`);
  writeFileSync(torn, '{"format":"sumstitch');
  await choose(there.page, torn);
  await there.page.getByText(/Nothing was changed\./).waitFor();
  expect(await read(there.page)).toEqual(before);
  expectQuiet(there);
});

async function choose(page: Page, file: string): Promise<void> {
  await page.locator('input[type=file]').first().setInputFiles(file);
}

/** What the parent's pages say of the household. */
async function read(page: Page): Promise<readonly string[]> {
  const said: string[] = [];
  for (const name of ['Today', 'Marking', 'Facts', 'Over time', 'Children and sets', 'Sittings'] as const) {
    await turnTo(page, name);
    await page.getByText('Reading the sittings …').waitFor({ state: 'detached' });
    await page.waitForTimeout(300);
    said.push((await page.locator('main.page').textContent()) ?? '');
  }
  return said;
}
