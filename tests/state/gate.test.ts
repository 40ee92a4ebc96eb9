import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { GateData, GateStore } from '../../src/core/gate/gate-data';
import { writeRecoveryCode } from '../../src/core/gate/recovery-code';
import { createGate, type Gate } from '../../src/state/gate';

const rounds = 5;

function memoryStore(): GateStore & { data: GateData | null; refuses: boolean } {
  return {
    data: null,
    refuses: false,
    async read() {
      return this.data;
    },
    async write(data) {
      if (this.refuses) throw new Error('full');
      this.data = data;
    },
  };
}

async function setUp() {
  const store = memoryStore();
  const gate = createGate(store, rounds);
  await gate.load();
  const prepared = gate.prepare('4826');
  await prepared.keep();
  gate.lock();
  return { store, gate, code: prepared.recoveryCode };
}

async function wrongTimes(gate: Awaited<ReturnType<typeof setUp>>['gate'], count: number) {
  for (let made = 0; made < count; made += 1) {
    expect(await gate.tryPin('9999')).toBe('wrong');
    await vi.advanceTimersByTimeAsync(61_000);
  }
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'performance', 'Date'] });
});

afterEach(() => {
  vi.useRealTimers();
});

test('a gate without a PIN is unset, and nothing is stored before the code is written down', async () => {
  const store = memoryStore();
  const gate = createGate(store, rounds);
  expect(gate.phase.value).toBe('loading');
  await gate.load();
  expect(gate.phase.value).toBe('unset');
  const prepared = gate.prepare('4826');
  expect(store.data).toBeNull();
  await prepared.keep();
  expect(gate.phase.value).toBe('open');
  expect(store.data?.tries).toBe(0);
});

test('neither the PIN nor the code stands in the store', async () => {
  const { store, code } = await setUp();
  const text = JSON.stringify(store.data);
  expect(text).not.toContain('4826');
  expect(text).not.toContain(code);
});

test('the right PIN opens, another does not, and a page opened again is locked', async () => {
  const { store, gate } = await setUp();
  expect(await gate.tryPin('4827')).toBe('wrong');
  expect(gate.phase.value).toBe('locked');
  expect(await gate.tryPin('4826')).toBe('opened');
  expect(gate.phase.value).toBe('open');
  const again = createGate(store, rounds);
  await again.load();
  expect(again.phase.value).toBe('locked');
});

test('what is no PIN is said to be none and costs no try', async () => {
  const { store, gate } = await setUp();
  expect(await gate.tryPin('')).toBe('empty');
  expect(await gate.tryPin('12ab')).toBe('notDigits');
  expect(await gate.tryPin('123')).toBe('tooShort');
  expect(await gate.tryPin('123456789')).toBe('tooLong');
  expect(store.data?.tries).toBe(0);
});

test('during a wait even the right PIN is not looked at', async () => {
  const { gate } = await setUp();
  for (const _ of [1, 2, 3]) expect(await gate.tryPin('9999')).toBe('wrong');
  expect(gate.waitLeftMs.value).toBe(2000);
  expect(await gate.tryPin('4826')).toBe('waiting');
  await vi.advanceTimersByTimeAsync(1000);
  expect(gate.waitLeftMs.value).toBe(1000);
  await vi.advanceTimersByTimeAsync(1000);
  expect(await gate.tryPin('4826')).toBe('opened');
});

test('a reload in mid-wait begins the wait again; setting the device’s clock moves nothing', async () => {
  const { store, gate } = await setUp();
  for (const _ of [1, 2, 3]) await gate.tryPin('9999');
  vi.setSystemTime(Date.now() + 86_400_000);
  const again = createGate(store, rounds);
  await again.load();
  expect(again.waitLeftMs.value).toBe(2000);
  expect(await again.tryPin('4826')).toBe('waiting');
});

test('a reload after the wait was sat out owes none', async () => {
  const { store, gate } = await setUp();
  await wrongTimes(gate, 4);
  const again = createGate(store, rounds);
  await again.load();
  expect(again.waitLeftMs.value).toBe(0);
});

test('opening forgets the wrong tries', async () => {
  const { store, gate } = await setUp();
  await wrongTimes(gate, 5);
  expect(await gate.tryPin('4826')).toBe('opened');
  expect(store.data).toMatchObject({ tries: 0, waitDue: false });
});

test('a page closed while a try is being checked has still used it up', async () => {
  const { store, gate } = await setUp();
  const checking = gate.tryPin('9999');
  await vi.waitFor(() => expect(store.data?.tries).toBe(1));
  await checking;
});

test('wrong tries made in another tab make this one wait too', async () => {
  const { store, gate } = await setUp();
  const other = createGate(store, rounds);
  await other.load();
  for (const _ of [1, 2, 3]) await other.tryPin('9999');
  expect(await gate.tryPin('4826')).toBe('waiting');
  expect(gate.waitLeftMs.value).toBe(2000);
});

test('the recovery code passes the wait, and a new PIN takes the old one’s place', async () => {
  const { store, gate, code } = await setUp();
  for (const _ of [1, 2, 3]) await gate.tryPin('9999');
  expect(gate.waitLeftMs.value).toBeGreaterThan(0);
  expect(await gate.tryRecoveryCode(writeRecoveryCode(code).toLowerCase())).toBe('opened');
  expect(gate.phase.value).toBe('renewing');
  expect(gate.waitLeftMs.value).toBe(0);
  await gate.changePin('135790');
  expect(gate.phase.value).toBe('open');
  gate.lock();
  expect(await gate.tryPin('4826')).toBe('wrong');
  expect(await gate.tryPin('135790')).toBe('opened');
  expect(store.data?.tries).toBe(0);
});

test('a wrong recovery code opens nothing and lengthens no wait', async () => {
  const { store, gate } = await setUp();
  expect(await gate.tryRecoveryCode('0000-0000-0000-0000')).toBe('wrong');
  expect(await gate.tryRecoveryCode('0000')).toBe('length');
  expect(gate.phase.value).toBe('locked');
  expect(store.data?.tries).toBe(0);
});

test('a fresh recovery code puts the old one out of use, the PIN staying', async () => {
  const { gate, code } = await setUp();
  await gate.tryPin('4826');
  const prepared = gate.prepareCode();
  await prepared.keep();
  gate.lock();
  expect(await gate.tryRecoveryCode(code)).toBe('wrong');
  expect(await gate.tryRecoveryCode(prepared.recoveryCode)).toBe('opened');
});

test('a shut gate changes nothing', async () => {
  const { gate } = await setUp();
  await expect(gate.changePin('1111')).rejects.toThrow('shut');
  expect(() => gate.prepareCode()).toThrow('shut');
});

describe('where a try cannot be stored', () => {
  /** Waits until a try is being waited for. */
  const untilWaiting = (gate: Gate) => vi.waitFor(() => expect(gate.waitLeftMs.value).toBeGreaterThan(0));

  test('the grown-up gets in after the longest wait', async () => {
    const { store, gate } = await setUp();
    store.refuses = true;
    const trying = gate.tryPin('4826');
    await untilWaiting(gate);
    expect(gate.isChecking.value).toBe(true);
    await vi.advanceTimersByTimeAsync(59_000);
    expect(gate.phase.value).toBe('locked');
    await vi.advanceTimersByTimeAsync(1000);
    expect(await trying).toBe('opened');
    expect(gate.phase.value).toBe('open');
  });

  test('a reload gives no try for nothing: each has its own longest wait', async () => {
    const { store, gate } = await setUp();
    store.refuses = true;
    void gate.tryPin('0000');
    await untilWaiting(gate);
    await vi.advanceTimersByTimeAsync(50_000);
    const again = createGate(store, rounds);
    await again.load();
    const trying = again.tryPin('4826');
    await untilWaiting(again);
    await vi.advanceTimersByTimeAsync(59_000);
    expect(again.phase.value).toBe('locked');
    await vi.advanceTimersByTimeAsync(1000);
    expect(await trying).toBe('opened');
  });

  test('wrong tries are counted in memory, and stored with the next that can be', async () => {
    const { store, gate } = await setUp();
    store.refuses = true;
    for (const _ of [1, 2, 3]) {
      const trying = gate.tryPin('9999');
      await untilWaiting(gate);
      await vi.advanceTimersByTimeAsync(60_000);
      expect(await trying).toBe('wrong');
      await vi.advanceTimersByTimeAsync(60_000);
    }
    store.refuses = false;
    expect(await gate.tryPin('9999')).toBe('wrong');
    expect(store.data?.tries).toBe(4);
    expect(gate.waitLeftMs.value).toBe(4000);
  });

  test('the recovery code opens at once', async () => {
    const { store, gate, code } = await setUp();
    store.refuses = true;
    expect(await gate.tryRecoveryCode(code)).toBe('opened');
    expect(gate.phase.value).toBe('renewing');
  });
});

test('a store that can’t be read at the start is told as trouble', async () => {
  const gate = createGate(
    { read: () => Promise.reject(new Error('no')), write: async () => undefined },
    rounds,
  );
  await gate.load();
  expect(gate.phase.value).toBe('trouble');
});
