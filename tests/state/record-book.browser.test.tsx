import '../../src/ui/tokens.css';
import { cleanup, render } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { homeOf } from '../../src/core/household/bring-back';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory } from '../../src/core/household/history';
import { isOfHistory, type LogRecord } from '../../src/core/record/record';
import { makeBoat } from '../../src/demo/make-boat';
import { wren } from '../../src/demo/wren';
import { openJournals } from '../../src/log/journal';
import type { Log } from '../../src/log/log';
import { allRecords } from '../../src/log/lots';
import { mergeRecords } from '../../src/log/merge';
import { ParentSide } from '../../src/parent/parent-side';
import { type Page, pages, place } from '../../src/parent/place';
import { recordFileVersion, writeRecordFile } from '../../src/record-file/record-file';
import { satOf } from '../core/household/made-records';
import { dump } from '../log/open-a-log';
import { testGate } from '../parent/open-pages';
import { until } from '../parent/until';
import { answer, childDrafts, goTo, type Home, logOf, on, openHome, settled } from './a-home';

async function bookOf(home: Home) {
  return home.app.desk.openRecordBook();
}

function fileOf(text: string): File {
  return new File([text], 'a.json');
}

async function backupOf(home: Home): Promise<File> {
  return (await (await bookOf(home)).makeBackup()).file;
}

/** Reads a file and brings all of it in. */
async function restore(home: Home, file: Blob, asNew: readonly string[] = []) {
  const book = await bookOf(home);
  const reading = await book.readFile(file);
  if ('trouble' in reading) throw new Error(reading.trouble.reason);
  return book.bringIn(reading.file, asNew);
}

/** A home that holds records made elsewhere. */
async function homeWith(records: readonly LogRecord[]): Promise<Home> {
  const home = await openHome();
  await mergeRecords(await logOf(home), records);
  return openHome({ name: home.name, ports: home.ports });
}

/** Everything on screen is a function of this. */
async function shown(log: Log) {
  const records = await allRecords(log);
  const { children, ownSets, settings, lines, rulings, tombstones } = foldHousehold(homeOf(records));
  const history = effectiveHistory(records.filter(isOfHistory), foldHousehold(homeOf(records)));
  return { children, ownSets, settings, lines, rulings, tombstones, history };
}

async function pageTexts(home: Home): Promise<ReadonlyMap<Page, string>> {
  const texts = new Map<Page, string>();
  await home.app.openDesk();
  for (const page of pages) {
    if (page === 'recordBook') continue;
    cleanup();
    place.value = { page, sitting: null, child: null, fact: null };
    const gate = await testGate();
    const { container } = render(<ParentSide desk={home.app.desk} gate={gate} onBack={() => undefined} />);
    await until(() => expect(container.querySelector('main.page h1')).not.toBeNull());
    await until(() =>
      expect(container.querySelector('main.page')?.textContent).not.toMatch(/Reading|Opening/),
    );
    await new Promise((resolve) => setTimeout(resolve, 300));
    texts.set(page, container.querySelector('main.page')?.textContent ?? '');
  }
  cleanup();
  return texts;
}

const month = makeBoat('2026-03-02', 4).records;

test('a month goes out as a backup, and into an empty store, and every page says the same', async () => {
  const [from, to] = [await homeWith(month), await openHome()];
  expect((await restore(to, await backupOf(from))).added).toBe(month.length);
  expect(await allRecords(await logOf(to))).toEqual(await allRecords(await logOf(from)));
  expect(await shown(await logOf(to))).toEqual(await shown(await logOf(from)));
  // When the last backup was is the device's own; the one has just made the file that the other came from.
  await (await bookOf(from)).noteBackup();
  const [one, other] = [await pageTexts(from), await pageTexts(to)];
  expect([...other]).toEqual([...one]);
  expect([...one.values()].join('').length).toBeGreaterThan(5000);
}, 60_000);

test('the same file twice changes nothing', async () => {
  const [from, to] = [await homeWith(month), await openHome()];
  const file = await backupOf(from);
  await restore(to, file);
  const before = await dump(await logOf(to));
  expect(await restore(to, file)).toEqual({ added: 0, known: month.length, gone: 0, refused: 0 });
  expect(await dump(await logOf(to))).toEqual(before);
});

test('two devices’ files in either order give the same household', async () => {
  const one = await homeWith(month);
  await one.app.desk.record(childDrafts('ann', 'Ann'));
  const other = await homeWith(month.slice(0, 120));
  await other.app.desk.record([{ kind: 'childDeleted', child: wren.id }, ...childDrafts('bo', 'Bo')]);
  const [x, y] = [await backupOf(one), await backupOf(other)];
  const [xy, yx] = [await openHome(), await openHome()];
  await restore(xy, x);
  await restore(xy, y);
  await restore(yx, y);
  await restore(yx, x);
  expect(await shown(await logOf(xy))).toEqual(await shown(await logOf(yx)));
  expect(xy.app.desk.household.value.children.map(({ name }) => name)).not.toContain('Wren');
});

test.each([
  ['of a later version', (text: string) => text.replace(`"version":${recordFileVersion}`, '"version":99')],
  ['cut off', (text: string) => text.slice(0, -200)],
  ['damaged', (text: string) => text.replace('"visits":[', '"visits":3,"seen":[')],
  ['not ours', () => 'Dear diary'],
  [
    'of a real household, on the boat or the other way',
    (text: string) => text.replace(/"device":"[^"]+"/, '"device":"boat"'),
  ],
  ['empty', () => ''],
])('a file %s is refused with a reason, and nothing is touched', async (_, spoil) => {
  const home = await homeWith(month.slice(0, 90));
  const text = await (await backupOf(home)).text();
  const before = await dump(await logOf(home));
  const reading = await (await bookOf(home)).readFile(fileOf(spoil(text)));
  expect('trouble' in reading && reading.trouble.reason).toMatch(/^[A-Z].+\.$/);
  expect(await dump(await logOf(home))).toEqual(before);
});

test('a file of 100 MB is refused unread, in a moment', async () => {
  const huge = new Blob(Array.from({ length: 100 }, () => new Uint8Array(1_000_000)));
  const reading = await (await bookOf(await openHome())).readFile(huge);
  expect(reading).toMatchObject({ trouble: { what: 'tooLarge' } });
});

test('a packed file is unpacked; one cut off is refused', async () => {
  const home = await homeWith(month.slice(0, 40));
  const text = await (await backupOf(home)).text();
  const packing = fileOf(text).stream().pipeThrough(new CompressionStream('gzip'));
  const packed = await new Response(packing).blob();
  const book = await bookOf(home);
  expect(await book.readFile(packed)).toEqual(await book.readFile(fileOf(text)));
  expect(await book.readFile(packed.slice(0, packed.size / 2))).toMatchObject({
    trouble: { what: 'damaged' },
  });
});

test('what is being sat is sealed into the file, and no PIN is in it', async () => {
  const home = await openHome({ records: childDrafts('ann', 'Ann') });
  await home.app.gateStore.write({
    v: 1,
    pin: { salt: 'SALT', hash: 'HASH', rounds: 1 },
    recovery: { salt: 'SALT', hash: 'HASH', rounds: 1 },
    tries: 0,
    waitDue: false,
  });
  const { kiosk } = home.app;
  kiosk.pick('ann');
  goTo(home, 'sheet');
  kiosk.goOn(on(home, 'next').step);
  answer(on(home, 'sitting').run, home.ports);
  await settled(home);
  expect(await openJournals(await logOf(home))).toHaveLength(1);
  const text = await (await backupOf(home)).text();
  expect(await openJournals(await logOf(home))).toEqual([]);
  expect(text).toContain('"ended":"stopped"');
  expect(text).not.toMatch(/SALT|HASH/);
});

test('what a file holds is told before anything happens', async () => {
  const home = await homeWith(month.slice(0, 150));
  const book = await bookOf(home);
  const reading = await book.readFile(fileOf(writeRecordFile('phone', 1_772_000_000_000, month)));
  if ('trouble' in reading) throw new Error(reading.trouble.reason);
  const before = await dump(await logOf(home));
  const { children, fresh, isOwn } = await book.lookInto(reading.file);
  expect(isOwn).toBe(false);
  expect(fresh).toBe(month.length - 150);
  expect(children.map(({ name, state }) => [name, state])).toEqual([
    ['Wren', 'here'],
    ['Teo', 'here'],
    ['Juniper', 'here'],
  ]);
  const sats = month.filter(({ kind }) => kind === 'sat');
  expect(children.reduce((sum, { sittings }) => sum + sittings.all, 0)).toBe(sats.length);
  expect(await dump(await logOf(home))).toEqual(before);
});

test('a child deleted for good comes back as a new one, the same on two devices', async () => {
  const records = [...month, satOf(wren.id, '2026-03-02', 9000, [['mul-2-3', '6']])];
  const [one, other] = [await homeWith(records), await homeWith(records)];
  const old = await backupOf(one);
  for (const home of [one, other]) {
    await home.app.desk.deleteChild(wren.id);
    const book = await bookOf(home);
    const reading = await book.readFile(old);
    if ('trouble' in reading) throw new Error(reading.trouble.reason);
    const { children } = await book.lookInto(reading.file);
    expect(children.find(({ id }) => id === wren.id)?.state).toBe('deleted');
    await restore(home, old, [wren.id]);
  }
  const back = ({ app }: Home) => app.desk.household.value.children.find(({ name }) => name === 'Wren');
  const [id] = [back(one)?.id ?? ''];
  expect(id).toMatch(/^[0-9a-f]{32}$/);
  expect(back(other)?.id).toBe(id);
  const days = (await shown(await logOf(one))).history.children.get(id)?.sittings ?? [];
  expect(days).toHaveLength(
    records.filter((record) => record.kind === 'sat' && record.child === wren.id).length,
  );

  await restore(one, await backupOf(other));
  await restore(other, await backupOf(one));
  expect(await shown(await logOf(one))).toEqual(await shown(await logOf(other)));
  // Deleted once more, the old file still makes a new child of it.
  await one.app.desk.deleteChild(id);
  await restore(one, old, [wren.id]);
  expect(back(one)?.id).toMatch(/^[0-9a-f]{32}$/);
  expect(back(one)?.id).not.toBe(id);
});
