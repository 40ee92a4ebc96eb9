import { expect, test } from 'vitest';
import { append } from '../../src/log/append';
import { clearTail } from '../../src/log/clear-tail';
import { ann, dump, freshName, openFresh } from './open-a-log';

async function names(): Promise<readonly (string | undefined)[]> {
  return (await indexedDB.databases()).map(({ name }) => name);
}

test('the log stays as it is, and nothing is left behind', async () => {
  const name = freshName();
  const log = await openFresh(name);
  await append(log, [ann]);
  const before = await dump(log);
  await Promise.all([clearTail(name), clearTail(name)]);
  expect(await dump(log)).toEqual(before);
  expect((await names()).filter((other) => other?.startsWith(name))).toEqual([name]);
});

test('in a browser that stores nothing it comes to nothing', async () => {
  const open = indexedDB.open;
  indexedDB.open = () => {
    throw new DOMException('no', 'SecurityError');
  };
  try {
    await expect(clearTail(freshName())).resolves.toBeUndefined();
  } finally {
    indexedDB.open = open;
  }
});
