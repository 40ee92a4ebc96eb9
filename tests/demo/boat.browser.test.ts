import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { foldHousehold } from '../../src/core/household/fold-household';
import type { LogRecord } from '../../src/core/record/record';
import { boatGate, boatName, prepareBoat } from '../../src/demo/boat';
import { append } from '../../src/log/append';
import { homeName, isLog, type Log, openLog } from '../../src/log/log';
import { allRecords } from '../../src/log/lots';
import { readHousehold } from '../../src/log/reads';
import { openApp } from '../../src/state/app';
import { browserPorts, type Ports } from '../../src/state/ports';

const morning = new Date(2026, 10, 25, 10).getTime();
const portsAt = (now: number): Ports => ({ ...browserPorts, now: () => now });
const ports = portsAt(morning);

async function opened(name: string, at = ports): Promise<Log> {
  const log = await openLog(at, name);
  if (!isLog(log)) throw new Error(log.what);
  return log;
}

function forget(name: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(name);
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });
}

const idsOf = (records: readonly LogRecord[]) => records.map(({ id }) => id);

beforeEach(() => Promise.all([forget(boatName), forget(homeName)]));
afterEach(() => Promise.all([forget(boatName), forget(homeName)]));

describe('the boat in its store', () => {
  test('is not the household of this device', async () => {
    expect(boatName).not.toBe(homeName);
    const home = await opened(homeName);
    await append(home, [{ kind: 'childAdded', child: 'ann', name: 'Ann', edge: 1 }]);
    const before = await allRecords(home);
    expect(await prepareBoat(ports)).toBeNull();
    expect(await allRecords(home)).toEqual(before);
    const boat = await allRecords(await opened(boatName));
    expect(boat.length).toBeGreaterThan(200);
    expect(idsOf(boat).filter((id) => idsOf(before).includes(id))).toEqual([]);
  });

  test('holds nothing of the boat under the real name, even where nothing else has been', async () => {
    await prepareBoat(ports);
    expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(homeName);
  });

  test('has three children, and the visitor goes on where the records stop', async () => {
    await prepareBoat(ports);
    const log = await opened(boatName);
    const made = await allRecords(log);
    const { children } = foldHousehold(await readHousehold(log));
    expect(children.map(({ name }) => name)).toEqual(['Wren', 'Teo', 'Juniper']);
    const [next] = await append(log, [{ kind: 'setKept', child: 'x', set: 'doubles', kept: true }]);
    expect(next?.seq).toBe(made.length + 1);
    expect(made.every(({ device }) => device === next?.device)).toBe(true);
  });

  test('keeps what a visitor did on the same day', async () => {
    await prepareBoat(ports);
    await append(await opened(boatName), [{ kind: 'setStarted', child: 'x', set: 'doubles' }]);
    const before = await allRecords(await opened(boatName));
    await prepareBoat(portsAt(morning + 3_600_000));
    expect(await allRecords(await opened(boatName))).toEqual(before);
  });

  test('is made anew on another day, with nothing of the old one left', async () => {
    await prepareBoat(ports);
    const old = idsOf(await allRecords(await opened(boatName)));
    await prepareBoat(portsAt(morning + 24 * 3_600_000));
    const fresh = await allRecords(await opened(boatName));
    expect(idsOf(fresh).filter((id) => old.includes(id))).toEqual([]);
    expect(fresh.some((record) => 'day' in record && record.day === '2026-11-26')).toBe(true);
  });

  test('opens as an app: Wren done, Teo and Juniper with something to do', async () => {
    await prepareBoat(ports);
    const app = await openApp(ports, () => {}, await opened(boatName));
    const days = [...app.desk.days.value.values()];
    expect(days.map(({ isDone }) => isDone)).toEqual([true, false, false]);
    expect(days.map(({ steps }) => steps[0]?.what)).toEqual(['piece', 'row', 'cards']);
    expect(app.kiosk.screen.value.on).toBe('whose');
    app.close();
  });
});

describe('its gate', () => {
  test('stands open and asks for nothing', async () => {
    const gate = boatGate();
    await gate.load();
    expect(gate.phase.value).toBe('open');
    gate.lock();
    expect(gate.phase.value).toBe('open');
    expect(await gate.tryPin('0000')).toBe('opened');
    expect(await gate.tryRecoveryCode('')).toBe('opened');
  });

  test('keeps no PIN', async () => {
    const gate = boatGate();
    await gate.prepare('1234').keep();
    await gate.prepareCode().keep();
    await gate.changePin('4321');
    expect(gate.waitLeftMs.value).toBe(0);
    expect(gate.isChecking.value).toBe(false);
    expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(boatName);
  });
});
