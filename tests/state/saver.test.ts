import { expect, test } from 'vitest';
import { LogTroubleError } from '../../src/log/trouble';
import { createSaver } from '../../src/state/saver';
import { fakePorts } from './fake-ports';

/** A disk that can be filled and emptied; it keeps what was written to it, in order. */
function disk() {
  const written: string[] = [];
  let isFull = false;
  return {
    written,
    fill: () => {
      isFull = true;
    },
    empty: () => {
      isFull = false;
    },
    write: (what: string) => async () => {
      // Two turns later, so that writes asked for meanwhile have to wait.
      await null;
      await null;
      if (isFull) throw new LogTroubleError('full');
      written.push(what);
    },
  };
}

async function turns(): Promise<void> {
  for (let turn = 0; turn < 50; turn += 1) await null;
}

test('writes are made one after another, in the order they were asked for', async () => {
  const saver = createSaver(fakePorts());
  const { written, write } = disk();
  let running = 0;
  let most = 0;
  for (const what of ['a', 'b', 'c'])
    saver.save(async () => {
      running += 1;
      most = Math.max(most, running);
      await write(what)();
      running -= 1;
    });
  expect(saver.waiting.value).toBe(3);
  await saver.settled();
  expect(written).toEqual(['a', 'b', 'c']);
  expect(most).toBe(1);
  expect(saver.waiting.value).toBe(0);
});

test('a write that failed is tried again before any later one, and nothing is dropped', async () => {
  const ports = fakePorts();
  const saver = createSaver(ports);
  const { written, write, fill, empty } = disk();
  saver.save(write('a'));
  await turns();
  fill();
  saver.save(write('b'));
  await turns();
  saver.save(write('c'));
  saver.save(write('d'));
  await turns();
  expect(written).toEqual(['a']);
  expect(saver.waiting.value).toBe(3);
  expect(saver.trouble.value).toEqual({ what: 'full' });

  ports.pass(10_000);
  await turns();
  expect(written).toEqual(['a']);
  empty();
  ports.pass(3000);
  await turns();
  expect(written).toEqual(['a', 'b', 'c', 'd']);
  expect(saver.waiting.value).toBe(0);
  expect(saver.trouble.value).toBeNull();
});

test('a full disk is tried at its own pace, however many answers come meanwhile', async () => {
  const ports = fakePorts();
  const saver = createSaver(ports);
  const { write, fill } = disk();
  fill();
  for (let answer = 0; answer < 20; answer += 1) {
    saver.save(write(`${answer}`));
    await turns();
  }
  expect(ports.timers()).toBe(1);
  ports.pass(3000);
  await turns();
  expect(ports.timers()).toBe(1);
});

test('a new answer finds at once that there is room again', async () => {
  const saver = createSaver(fakePorts());
  const { written, write, fill, empty } = disk();
  fill();
  saver.save(write('a'));
  await turns();
  empty();
  saver.save(write('b'));
  await turns();
  expect(written).toEqual(['a', 'b']);
});

test('nothing asked for is settled at once, and what was asked for once it is stored', async () => {
  const saver = createSaver(fakePorts());
  await saver.settled();
  const { written, write } = disk();
  saver.save(write('a'));
  saver.save(write('b'));
  await saver.settled();
  expect(written).toEqual(['a', 'b']);
});

test('who waits on a full disk is told so instead of waiting for ever', async () => {
  const ports = fakePorts();
  const saver = createSaver(ports);
  const { written, write, fill, empty } = disk();
  fill();
  saver.save(write('a'));
  await expect(saver.settled()).rejects.toMatchObject({ trouble: { what: 'full' } });
  await expect(saver.settled()).rejects.toMatchObject({ trouble: { what: 'full' } });
  expect(ports.timers()).toBe(1);
  empty();
  await saver.settled();
  expect(written).toEqual(['a']);
});

test('a write that fails for a reason nobody knows is not dropped either', async () => {
  const ports = fakePorts();
  const saver = createSaver(ports);
  let tries = 0;
  saver.save(async () => {
    tries += 1;
    if (tries < 3) throw new TypeError('?');
  });
  await turns();
  expect(saver.trouble.value).toEqual({ what: 'unknown' });
  for (const _ of [1, 2]) {
    ports.pass(3000);
    await turns();
  }
  expect(tries).toBe(3);
  expect(saver.trouble.value).toBeNull();
});
