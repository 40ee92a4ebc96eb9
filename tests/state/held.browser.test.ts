import { afterEach, expect, test } from 'vitest';
import { readRecordFile } from '../../src/record-file/read-record-file';
import { answer, childDrafts, goTo, type Home, logOf, on, openHome, sats, settled, sitAll } from './a-home';

const put = IDBObjectStore.prototype.put;
afterEach(makeRoom);

function fillDisk(): void {
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
}

function makeRoom(): void {
  IDBObjectStore.prototype.put = put;
}

/** Ann in mid-sheet with two answers stored, and no room for more. */
async function onFullDisk(): Promise<Home> {
  const home = await openHome({ records: childDrafts('ann', 'Ann') });
  home.app.kiosk.pick('ann');
  goTo(home, 'sheet');
  home.app.kiosk.goOn(on(home, 'next').step);
  for (const _ of [1, 2]) answer(on(home, 'sitting').run, home.ports);
  await settled(home);
  fillDisk();
  return home;
}

async function sheetIn(file: File) {
  const reading = readRecordFile(await file.text());
  if (!('file' in reading)) throw new Error('The file is not read.');
  return reading.file.records.find((record) => record.kind === 'sat' && record.purpose === 'sheet');
}

test('a sheet finished without room is on the cloth, on the parent’s pages and in a file', async () => {
  const home = await onFullDisk();
  sitAll(home);
  expect(home.app.kiosk.screen.value.on).toBe('piece');
  expect((await sats(home, 'ann')).map(({ purpose }) => purpose)).toContain('sheet');
  await home.app.openDesk();
  const { children } = home.app.desk.history.value ?? { children: new Map() };
  expect(children.get('ann')?.sittings.at(-1)?.sat.visits).toHaveLength(5);
  expect(home.app.desk.storage.value).toMatchObject({ trouble: { what: 'full' } });
  expect(await sheetIn(await home.app.desk.heldFile())).toMatchObject({ ended: 'finished', child: 'ann' });
});

test('what stands open is ended for the file, every answer in it', async () => {
  const home = await onFullDisk();
  answer(on(home, 'sitting').run, home.ports);
  expect(await sheetIn(await home.app.desk.heldFile())).toMatchObject({
    ended: 'stopped',
    visits: [{ place: 0 }, { place: 1 }, { place: 2 }],
  });
});

test('news from another window takes nothing held off the screen', async () => {
  const home = await onFullDisk();
  sitAll(home);
  makeRoom();
  const other = await openHome({ name: home.name, ports: home.ports });
  fillDisk();
  await other.app.desk.record([]);
  (await logOf(home)).news.tell(null);
  await expect.poll(async () => (await sats(home, 'ann')).length).toBe(3);
  expect(home.app.kiosk.screen.value.on).toBe('piece');
});

test('once there is room all of it is stored, once', async () => {
  const home = await onFullDisk();
  sitAll(home);
  makeRoom();
  home.ports.pass(3000);
  await expect.poll(() => home.app.desk.storage.value.waiting).toBe(0);
  const again = await openHome({ name: home.name, ports: home.ports });
  expect((await sats(again, 'ann')).filter(({ purpose }) => purpose === 'sheet')).toHaveLength(1);
});

test('a store that was erased takes no answer as if it were a log; memory goes into the file', async () => {
  const home = await onFullDisk();
  makeRoom();
  await new Promise((resolve) => {
    indexedDB.deleteDatabase(home.name).onsuccess = resolve;
  });
  sitAll(home);
  await expect.poll(() => home.app.desk.storage.value.trouble?.what).toBe('gone');
  expect(home.app.kiosk.screen.value.on).toBe('piece');
  expect(await sheetIn(await home.app.desk.heldFile())).toMatchObject({ ended: 'finished' });
});
