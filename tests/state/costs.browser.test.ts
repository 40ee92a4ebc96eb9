import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Draft } from '../../src/core/record/record';
import type { Sat } from '../../src/core/record/sat';
import type { Stamp } from '../../src/core/record/stamp';
import { append } from '../../src/log/append';
import { refreshCheckpoint } from '../../src/log/checkpoint';
import { answer, childDrafts, goTo, type Home, logOf, on, openHome, sats, settled, takeStep } from './a-home';

// What grows with the years is counted here, not timed: the benchmark times it.

const counted = { puts: 0, writes: 0, read: 0 };

beforeEach(() => {
  const { put, getAll } = IDBObjectStore.prototype;
  const { transaction } = IDBDatabase.prototype;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
    counted.puts += 1;
    return put.apply(this, given);
  });
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given) {
    if (given[1] === 'readwrite') counted.writes += 1;
    return transaction.apply(this, given);
  });
  vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(function (this: IDBObjectStore, ...given) {
    const request = getAll.apply(this, given);
    request.addEventListener('success', () => {
      counted.read += request.result.length;
    });
    return request;
  });
});

afterEach(() => {
  vi.restoreAllMocks();
});

async function costOf(act: () => unknown): Promise<typeof counted> {
  Object.assign(counted, { puts: 0, writes: 0, read: 0 });
  await act();
  return { ...counted };
}

/** One sheet as it was sat, to be had on any day. */
async function aSheet(): Promise<Omit<Sat, keyof Stamp>> {
  const home = await openHome({ records: childDrafts('ann', 'Ann') });
  home.app.kiosk.pick('ann');
  goTo(home, 'sheet');
  takeStep(home);
  await settled(home);
  const sheet = (await sats(home, 'ann')).find(({ purpose }) => purpose === 'sheet');
  if (!sheet) throw new Error('A sheet was sat.');
  const { id: _, v: __, seq: ___, device: ____, at: _____, ...draft } = sheet;
  return draft;
}

/** A home in which Ann sat a sheet on so many days before today, summed up as it is when idle. */
async function homeOfDays(days: number): Promise<Home> {
  const sheet = await aSheet();
  const home = await openHome({ records: childDrafts('ann', 'Ann') });
  const log = await logOf(home);
  const drafts = Array.from({ length: days }, (_, nth): Draft => {
    const day = new Date(Date.UTC(2026, 2, 1 - days + nth)).toISOString().slice(0, 10);
    return { ...sheet, day };
  });
  await append(log, drafts);
  while (await refreshCheckpoint(log, 'ann'));
  return home;
}

test('an answer is one write of one record, however long the history', async () => {
  for (const days of [0, 400]) {
    const { name, ports } = await homeOfDays(days);
    const home = await openHome({ name, ports });
    home.app.kiosk.pick('ann');
    goTo(home, 'sheet');
    home.app.kiosk.goOn(on(home, 'next').step);
    answer(on(home, 'sitting').run, ports);
    await settled(home);
    const cost = await costOf(() => {
      answer(on(home, 'sitting').run, ports);
      return settled(home);
    });
    expect(cost).toMatchObject({ puts: 1, writes: 1 });
  }
});

test('opening reads as many records after four hundred days as after sixty', async () => {
  const read: number[] = [];
  for (const days of [60, 400]) {
    const { name, ports } = await homeOfDays(days);
    read.push((await costOf(() => openHome({ name, ports }))).read);
  }
  expect(read[1]).toBe(read[0]);
  expect(read[0]).toBeGreaterThan(0);
});
