import { afterEach, expect, test, vi } from 'vitest';
import { openJournals } from '../../src/log/journal';
import { allRecords } from '../../src/log/lots';
import { createSeat, type Seat, type SeatTaker } from '../../src/state/seat';
import { answer, childDrafts, goTo, type Home, logOf, on, openHome, sats, settled, sitAll } from './a-home';
import { fakePorts } from './fake-ports';

const seats: Seat[] = [];
const homes: Home[] = [];
afterEach(() => {
  for (const seat of seats.splice(0)) seat.close();
  for (const { app } of homes.splice(0)) app.close();
});

let names = 0;

function window(name: string, taker: Partial<SeatTaker> = {}): Seat {
  const seat = createSeat(
    name,
    { isFree: () => true, got: async () => undefined, lost: () => undefined, ...taker },
    navigator.locks,
  );
  seats.push(seat);
  return seat;
}

function freshSeat(): string {
  names += 1;
  return `seat-${Date.now()}-${names}`;
}

test('of two windows the newer has the seat while nobody sits, and the older gets it back', async () => {
  const name = freshSeat();
  const first = window(name);
  await first.open();
  expect(first.isHere.value).toBe(true);
  const second = window(name);
  await second.open();
  expect([first.isHere.value, second.isHere.value]).toEqual([false, true]);
  second.close();
  await expect.poll(() => first.isHere.value).toBe(true);
});

test('in mid-sitting it stays where it is; after three seconds it may be taken, and that is told', async () => {
  const name = freshSeat();
  const lost = vi.fn();
  const first = window(name, { isFree: () => false, lost });
  await first.open();
  const got = vi.fn(async () => undefined);
  const second = window(name, { got });
  await second.open();
  expect([first.isHere.value, second.isHere.value, second.mayTake.value]).toEqual([true, false, false]);
  await expect.poll(() => second.mayTake.value, { timeout: 4000 }).toBe(true);
  second.take();
  await expect.poll(() => second.isHere.value).toBe(true);
  await expect.poll(() => first.isHere.value).toBe(false);
  expect(lost).toHaveBeenCalledOnce();
  expect(got).toHaveBeenCalledOnce();
});

test('without locks every window has a seat of its own', async () => {
  const seat = createSeat(freshSeat(), { isFree: () => true, got: async () => undefined, lost() {} }, null);
  await seat.open();
  expect(seat.isHere.value).toBe(true);
});

/** Ann in mid-sheet with two answers, in a window with locks. */
async function midSheet(): Promise<Home> {
  const home = await openHome({
    ports: { ...fakePorts(), locks: navigator.locks },
    records: childDrafts('ann', 'Ann'),
  });
  homes.push(home);
  home.app.kiosk.pick('ann');
  goTo(home, 'sheet');
  home.app.kiosk.goOn(on(home, 'next').step);
  for (const _ of [1, 2]) answer(on(home, 'sitting').run, home.ports);
  await settled(home);
  return home;
}

async function beside(home: Home): Promise<Home> {
  const other = await openHome({ name: home.name, ports: { ...fakePorts(), locks: navigator.locks } });
  homes.push(other);
  return other;
}

test('a sheet goes on in another window where it was, and the first window then only looks on', async () => {
  const first = await midSheet();
  const second = await beside(first);
  expect(second.app.kiosk.screen.value).toEqual({ on: 'elsewhere', mayTake: false });
  answer(on(first, 'sitting').run, first.ports);
  await settled(first);
  second.app.kiosk.sitHere();
  await expect.poll(() => second.app.kiosk.screen.value.on).toBe('away');
  await expect.poll(() => first.app.kiosk.screen.value.on).toBe('elsewhere');
  second.app.kiosk.carryOn();
  sitAll(second);
  await settled(second);
  const sheets = (await sats(second, 'ann')).filter(({ purpose }) => purpose === 'sheet');
  expect(sheets).toHaveLength(1);
  expect(sheets[0]?.visits.map(({ place }) => place)).toEqual([0, 1, 2, 3, 4]);
  // Without a reload the first knows of it.
  await expect.poll(() => first.app.desk.days.value.get('ann')?.sheets.length).toBe(1);
});

test('a window that loses the seat with answers not stored keeps them as a sitting of its own', async () => {
  const first = await midSheet();
  const second = await beside(first);
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  try {
    answer(on(first, 'sitting').run, first.ports);
    await expect.poll(() => first.app.desk.storage.value.trouble?.what).toBe('full');
    second.app.kiosk.sitHere();
    await expect.poll(() => first.app.kiosk.screen.value.on).toBe('elsewhere');
  } finally {
    IDBObjectStore.prototype.put = put;
  }
  first.ports.pass(3000);
  await settled(first);
  expect((await openJournals(await logOf(first)))[0]?.visits).toHaveLength(2);
  const [own] = (await sats(first, 'ann')).filter(({ purpose }) => purpose === 'sheet');
  expect(own?.visits.map(({ place }) => place)).toEqual([0, 1, 2]);
});

test('records of the parent in another window come in mid-sheet and disturb nothing', async () => {
  const first = await midSheet();
  const second = await beside(first);
  const { showing } = on(first, 'sitting').run.card.value;
  await second.app.desk.record(childDrafts('bo', 'Bo'));
  await second.app.desk.record([{ kind: 'setStarted', child: 'ann', set: 'times-4' }]);
  await expect.poll(() => first.app.desk.household.value.children.length).toBe(2);
  expect(on(first, 'sitting').run.card.value.showing).toBe(showing);
  sitAll(first);
  await settled(first);
  const sheet = (await sats(first, 'ann')).find(({ purpose }) => purpose === 'sheet');
  expect(sheet).toMatchObject({ ended: 'finished', set: 'times-3' });
});

test('a child deleted in another window in mid-sheet leaves nothing behind', async () => {
  const first = await midSheet();
  const { run } = on(first, 'sitting');
  const second = await beside(first);
  await second.app.desk.deleteChild('ann');
  await expect.poll(() => first.app.desk.household.value.children.length).toBe(0);
  answer(run, first.ports);
  await settled(first);
  const log = await logOf(first);
  expect(await openJournals(log)).toEqual([]);
  expect(await allRecords(log)).toMatchObject([{ kind: 'childDeleted', child: 'ann' }]);
});
