import { afterEach, test } from 'vitest';
import { closeDevices } from '../journeys/device';
import { openPages } from '../journeys/parent-hand';
import { figureOf, written } from './figures';
import { openYears } from './open-years';
import { type Opening, openingBy } from './page-opening';
import { rounds, tell } from './told';
import { recordsOf } from './years-in-store';

afterEach(closeDevices);

/** In the order they are opened; the first of a round reads what the others then share. */
const pages = ['Facts', 'Over time', 'Everything', 'Marking', 'Sittings', 'Today', 'What to teach on Monday'];

/** From Tuesday on to Friday, when Today leads to Monday's page. */
const toFriday = 3;

test('the parent’s pages over ten years', async () => {
  const records = recordsOf(10_800);
  const made = new Map<string, Opening[]>();
  for (let round = 0; round < rounds; round += 1) {
    const device = await openYears(records, { daysOn: toFriday });
    await openPages(device.page);
    await device.page.waitForTimeout(2000);
    for (const name of pages) made.set(name, [...(made.get(name) ?? []), await openingBy(device.page, name)]);
    await device.close();
  }
  const figures = Object.fromEntries(
    [...made].map(([name, all]) => [
      name,
      {
        ms: figureOf(all.map(({ ms }) => ms)),
        longestTask: figureOf(all.map(({ longestTask }) => longestTask)),
      },
    ]),
  );
  const rows = Object.entries(figures).map(
    ([name, { ms, longestTask }]) =>
      [
        name,
        { 'all there after, ms': written(ms, 0), 'longest task over 50 ms': written(longestTask, 0) },
      ] as const,
  );
  tell('pages', Object.fromEntries(rows), figures);
});
