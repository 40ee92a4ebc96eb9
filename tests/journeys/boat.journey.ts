import { afterEach, expect, test } from 'vitest';
import { keyHand, sit } from './child-hand';
import { closeDevices, type Device, expectQuiet, openDevice } from './device';
import { press, seeHeading } from './parent-hand';
import { storedSats } from './stored';

afterEach(closeDevices);

async function aboard(): Promise<Device> {
  const device = await openDevice();
  await press(device.page, 'Visit the boat');
  await device.page.getByRole('button', { name: /Juniper/ }).waitFor();
  return device;
}

test('the boat opens from the first screen, asks for no PIN, and locks back to the children', async () => {
  const device = await aboard();
  const { page } = device;
  await press(page, /Teo/);
  await press(page, 'Grown-ups');
  await seeHeading(page, /^Today/);
  const said = await page.locator('main').textContent();
  expect(said).toMatch(/Wren\s*Done/);
  expect(said).toMatch(/Teo\s*Sheet done\. (Loose|Thin)/);
  expect(said).toMatch(/Juniper\s*No sheet yet/);
  await press(page, 'Lock');
  await page.getByRole('button', { name: 'Begin' }).waitFor();
  expectQuiet(device);
});

test('a visitor sits the row that waits for Teo, and nothing of it reaches the real household', async () => {
  const device = await aboard();
  const { page } = device;
  await press(page, /Teo/);
  await press(page, 'Begin');
  const cards = await sit(page, await keyHand(device));
  expect(cards).toHaveLength(5);
  await page.reload();
  await page.getByRole('button', { name: 'Leave the boat' }).waitFor();
  await press(page, 'Leave the boat');
  await page.getByRole('button', { name: 'Visit the boat' }).waitFor();
  expect(await storedSats(page)).toEqual([]);
  expectQuiet(device);
});
