import { describe, expect, test } from 'vitest';
import type { LogRecord } from '../../src/core/record/record';
import { highestSeq } from '../../src/core/record/stamp';
import { append } from '../../src/log/append';
import { deleteChild } from '../../src/log/delete-child';
import type { Log } from '../../src/log/log';
import { allRecords } from '../../src/log/lots';
import { mergeRecords } from '../../src/log/merge';
import { satOf, stamped } from '../core/household/made-records';
import { ann, bo, countingPorts, dump, freshName, householdOf, openFresh, satDraft } from './open-a-log';

const day = '2026-03-02';

/** All records, in an order of their own: two logs with the same records give the same. */
async function contents(log: Log): Promise<LogRecord[]> {
  return (await allRecords(log)).sort((x, y) => (x.id < y.id ? -1 : 1));
}

async function twoDevices(): Promise<[Log, Log]> {
  return [
    await openFresh(freshName(), countingPorts('tablet')),
    await openFresh(freshName(), countingPorts('phone')),
  ];
}

async function exchange(x: Log, y: Log): Promise<void> {
  const [fromX, fromY] = [await allRecords(x), await allRecords(y)];
  await mergeRecords(x, fromY);
  await mergeRecords(y, fromX);
}

test('two devices that exchange their records have the same', async () => {
  const [tablet, phone] = await twoDevices();
  await append(tablet, [ann, satDraft('ann', day)]);
  await append(phone, [bo, satDraft('bo', day)]);
  await exchange(tablet, phone);
  expect(await contents(tablet)).toEqual(await contents(phone));
  expect(await contents(tablet)).toHaveLength(4);
});

test('merging again changes nothing', async () => {
  const [tablet, phone] = await twoDevices();
  await append(tablet, [ann, satDraft('ann', day)]);
  const records = await allRecords(tablet);
  expect(await mergeRecords(phone, records)).toEqual({ added: 2, known: 0, gone: 0, refused: 0 });
  const before = await dump(phone);
  expect(await mergeRecords(phone, [...records, ...records])).toEqual({
    added: 0,
    known: 2,
    gone: 0,
    refused: 0,
  });
  expect(await dump(phone)).toEqual(before);
});

test('the counter goes on from the highest seen anywhere', async () => {
  const [tablet, phone] = await twoDevices();
  await append(tablet, [ann, bo, ann]);
  await mergeRecords(phone, await allRecords(tablet));
  expect((await append(phone, [bo]))[0]?.seq).toBe(4);
});

describe('a tombstone', () => {
  test('that arrives takes all of the child with it', async () => {
    const [tablet, phone] = await twoDevices();
    await append(tablet, [ann, bo]);
    await exchange(tablet, phone);
    await append(phone, [satDraft('ann', day), satDraft('bo', day)]);
    await deleteChild(tablet, 'ann');
    await exchange(tablet, phone);
    expect(await contents(phone)).toEqual(await contents(tablet));
    expect((await contents(phone)).map(({ kind }) => kind).sort()).toEqual([
      'childAdded',
      'childDeleted',
      'sat',
    ]);
    await append(phone, [satDraft('ann', day)]);
    expect(await contents(phone)).toHaveLength(3);
  });

  test('keeps an old file from bringing the child back', async () => {
    const log = await openFresh();
    await append(log, [ann, satDraft('ann', day)]);
    const file = await allRecords(log);
    await deleteChild(log, 'ann');
    const after = await contents(log);
    expect(await mergeRecords(log, file)).toEqual({ added: 0, known: 0, gone: 2, refused: 0 });
    expect(await contents(log)).toEqual(after);
  });

  test('does not take what the other device had given to another child', async () => {
    const [tablet, phone] = await twoDevices();
    const [, , sat] = await append(tablet, [ann, bo, satDraft('ann', day)]);
    await exchange(tablet, phone);
    const ruling = { what: 'wrongChild', child: 'bo' } as const;
    await append(phone, [{ kind: 'ruled', child: 'ann', target: sat?.id ?? '', targetDay: day, ruling }]);
    await deleteChild(tablet, 'ann');
    await exchange(tablet, phone);
    expect(await contents(phone)).toEqual(await contents(tablet));
    expect((await contents(tablet)).some(({ id }) => id === sat?.id)).toBe(true);
  });
});

describe('what is not a record', () => {
  const good = satOf('ann', day, 1, [['mul-2-3', '6']]);
  const { child: _child, ...childless } = good;

  test.each([
    ['nothing', null],
    ['text', 'sat'],
    ['an id that would climb out of its path', { ...good, id: 'a/b' }],
    ['a device with a slash', { ...good, device: '../x' }],
    ['a child with a slash', { ...good, child: 'ann/2026' }],
    ['a day that is none', { ...good, day: '2.3.2026' }],
    ['a sitting of nobody', childless],
    ['a counter that leaves no room for the next', { ...good, seq: highestSeq + 1 }],
    ['half a counter', { ...good, seq: 1.5 }],
    ['a counter below nothing', { ...good, seq: -1 }],
    ['version 0', { ...good, v: 0 }],
    ['no kind', { ...good, kind: undefined }],
    ['a kind this version does not know', { ...good, kind: 'stood' }],
    ['a body that is not a sitting’s', { ...good, visits: 'many' }],
    ['a visit that never was', { ...good, visits: [{ place: 0 }] }],
    ['a day the calendar has not', { ...good, day: '2025-02-29' }],
    [
      'a sheet of a million',
      { ...stamped(2), kind: 'dayChanged', child: 'ann', day, change: { length: 1e6 } },
    ],
    ['a time past the end of time', { ...good, at: 8e16 }],
    ['a key to a prototype', { ...good, extra: JSON.parse('{"__proto__":{"sounds":false}}') }],
  ])('is refused: %s', async (_, value) => {
    const log = await openFresh();
    expect(await mergeRecords(log, [value, good])).toMatchObject({ added: 1, refused: 1 });
    expect(await allRecords(log)).toEqual([good]);
  });
});

test('of two records under one id every device keeps the same, whichever it met first', async () => {
  const sat = satOf('ann', day, 4, [['mul-2-3', '6']]);
  const changed = [
    { ...sat, seed: 8 },
    { ...sat, seq: 5, day: '2026-03-03' },
    { ...sat, child: 'bo' },
  ];
  const orders = [
    [sat, ...changed],
    [...changed, sat],
    [changed[1], sat, changed[2], changed[0]],
  ];
  const kept = await Promise.all(
    orders.map(async (order) => {
      const log = await openFresh();
      for (const record of order) await mergeRecords(log, [record]);
      return contents(log);
    }),
  );
  expect(kept).toEqual([[changed[1]], [changed[1]], [changed[1]]]);
});

test('records of a later version are kept whole, counted, and passed on', async () => {
  const [tablet, phone] = await twoDevices();
  const later = {
    ...stamped(7, { v: 99, id: 'later' }),
    kind: 'moonPhaseNoted',
    child: 'ann',
    day,
    phase: 'full',
  };
  await mergeRecords(tablet, [later, { ...stamped(8, { id: 'foreign', v: 99 }), kind: 'tideNoted' }]);
  expect((await householdOf(tablet)).later).toBe(1);
  await mergeRecords(phone, await allRecords(tablet));
  expect(await contents(phone)).toEqual(await contents(tablet));
  expect(await allRecords(phone)).toContainEqual(later);
});
