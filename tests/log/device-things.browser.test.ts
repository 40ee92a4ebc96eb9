import { expect, test } from 'vitest';
import { gateStore } from '../../src/log/gate-store';
import { readActiveChild, writeActiveChild } from '../../src/log/kiosk';
import { allRecords } from '../../src/log/lots';
import { LogTroubleError } from '../../src/log/trouble';
import { freshName, openFresh } from './open-a-log';

const secret = { salt: 'c2FsdA==', hash: 'aGFzaA==', rounds: 600_000 };
const data = { v: 1, pin: secret, recovery: secret, tries: 3, waitDue: true } as const;

test('a device is given to nobody until it is handed over, and remembers to whom', async () => {
  const name = freshName();
  const log = await openFresh(name);
  expect(await readActiveChild(log)).toBe(null);
  await writeActiveChild(log, 'ann');
  expect(await readActiveChild(await openFresh(name))).toBe('ann');
  await writeActiveChild(log, null);
  expect(await readActiveChild(log)).toBe(null);
});

test('the gate survives a reload and is in no backup', async () => {
  const name = freshName();
  const log = await openFresh(name);
  expect(await gateStore(log).read()).toBe(null);
  await gateStore(log).write(data);
  const again = await openFresh(name);
  expect(await gateStore(again).read()).toEqual(data);
  expect(await allRecords(again)).toEqual([]);
});

test('a gate this build cannot read is never taken for no gate', async () => {
  const log = await openFresh();
  await gateStore(log).write({ ...data, v: 2 } as unknown as typeof data);
  await expect(gateStore(log).read()).rejects.toThrow(LogTroubleError);
});
