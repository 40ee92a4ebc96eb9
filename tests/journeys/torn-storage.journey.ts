import { existsSync, readdirSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import { makeProfile, serveBuilt } from './browser';
import { keyHand, sit } from './child-hand';
import { endTablets, openTablet } from './killable';
import { beginSheet } from './morning';
import { press, seeHeading, setUp } from './parent-hand';
import { readStored, storedVisits } from './stored';

const cleanups: (() => unknown)[] = [];
afterEach(async () => {
  await endTablets();
  for (const cleanup of cleanups.splice(0).reverse()) await cleanup();
});

// What a kill between the two halves of a write leaves behind; a real kill does so once in hundreds of times.
test('a write torn by a kill costs its own answer, and nothing at the start after next', async () => {
  const served = await serveBuilt();
  const { profile, remove } = makeProfile();
  cleanups.push(remove, served.close);
  let tablet = await openTablet(profile, served.url);
  await setUp(tablet.page, 'Wren');
  await beginSheet(tablet.page, () => keyHand(tablet));
  await sit(tablet.page, await keyHand(tablet), { until: 3 });
  await expect.poll(async () => (await storedVisits(tablet.page)).length).toBe(3);
  await tablet.kill();
  const torn = newestLog(profile, served.port);
  truncateSync(torn, statSync(torn).size - 3);

  tablet = await openTablet(profile, served.url);
  await seeHeading(tablet.page, words.away);
  const kept = await storedVisits(tablet.page);
  expect(kept.length).toBeGreaterThanOrEqual(2);
  await press(tablet.page, words.carryOn);
  await sit(tablet.page, await keyHand(tablet), { until: 2 });
  await expect.poll(async () => (await storedVisits(tablet.page)).length).toBe(kept.length + 2);
  await expect.poll(() => existsSync(torn)).toBe(false);
  const before = await readStored(tablet.page);
  await tablet.kill();

  tablet = await openTablet(profile, served.url);
  await seeHeading(tablet.page, words.away);
  expect(await readStored(tablet.page)).toEqual(before);
});

/** The file that Chromium appends an origin's changes to. */
function newestLog(profile: string, port: number): string {
  const folder = join(profile, 'Default', 'IndexedDB', `http_127.0.0.1_${port}.indexeddb.leveldb`);
  const logs = readdirSync(folder).filter((file) => file.endsWith('.log'));
  const newest = logs.toSorted().at(-1);
  if (newest === undefined) throw new Error('The browser keeps no log of this kind: nothing to tear.');
  return join(folder, newest);
}
