import { readFileSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import { readRecordFile } from '../../src/record-file/read-record-file';
import { keyHand, sit } from './child-hand';
import { closeDevices, expectQuiet, openDevice } from './device';
import { setFull, withDisk } from './full-disk';
import { beginSheet } from './morning';
import { fill, pin, press, seeHeading, setUp } from './parent-hand';

afterEach(closeDevices);

test('with a full disk the grown-up still gets in, and saves to a file what is only held', async () => {
  const device = await openDevice({ before: withDisk });
  const { page } = device;
  await setUp(page, 'Wren');
  await beginSheet(page, () => keyHand(device));
  await sit(page, await keyHand(device), { until: 3 });
  await setFull(page, true);
  await sit(page, await keyHand(device));
  await seeHeading(page, words.piece);

  await press(page, 'Grown-ups');
  await fill(page, 'PIN', pin);
  await page.clock.install();
  await press(page, 'Open');
  await page.getByText('This one is looked at in a minute').waitFor();
  await page.clock.fastForward(55_000);
  expect(await page.getByRole('button', { name: 'Lock', exact: true }).count()).toBe(0);
  await page.clock.fastForward(10_000);
  await page.getByRole('button', { name: 'Lock', exact: true }).waitFor();

  await page.getByText('held by this page alone').waitFor();
  const coming = page.waitForEvent('download');
  await press(page, 'Save everything to a file');
  const file = await coming;
  expect(file.suggestedFilename()).toMatch(/^sumstitch-held-\d{4}-\d\d-\d\d\.json$/);
  const reading = readRecordFile(readFileSync(await file.path(), 'utf8'));
  const sats = 'file' in reading ? reading.file.records.filter((record) => record.kind === 'sat') : [];
  expect(sats.find(({ purpose }) => purpose === 'sheet')?.visits).toHaveLength(25);
  expectQuiet(device);
});
