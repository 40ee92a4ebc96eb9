import { expect, test } from 'vitest';
import { isSameBytes, isSecret, keepSecret, pinRounds } from '../../src/state/pin-hash';

test('a kept secret knows its own and no other', async () => {
  const kept = await keepSecret('4826', 10);
  expect(await isSecret('4826', kept)).toBe(true);
  expect(await isSecret('4827', kept)).toBe(false);
  expect(await isSecret('04826', kept)).toBe(false);
});

test('the same secret is never kept the same way twice', async () => {
  const [one, two] = await Promise.all([keepSecret('4826', 10), keepSecret('4826', 10)]);
  expect(one.salt).not.toBe(two.salt);
  expect(one.hash).not.toBe(two.hash);
});

test('sixteen bytes of salt and thirty-two of hash are kept, with the rounds they took', async () => {
  const kept = await keepSecret('0000');
  expect(atob(kept.salt)).toHaveLength(16);
  expect(atob(kept.hash)).toHaveLength(32);
  expect(kept.rounds).toBe(pinRounds);
});

test('bytes are the same only when all of them are', () => {
  expect(isSameBytes(Uint8Array.of(1, 2, 3), Uint8Array.of(1, 2, 3))).toBe(true);
  expect(isSameBytes(Uint8Array.of(1, 2, 3), Uint8Array.of(1, 2, 4))).toBe(false);
  expect(isSameBytes(Uint8Array.of(1, 2), Uint8Array.of(1, 2, 0))).toBe(false);
  expect(isSameBytes(Uint8Array.of(), Uint8Array.of())).toBe(true);
});
