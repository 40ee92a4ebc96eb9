import { expect, test } from 'vitest';
import {
  type GateData,
  withTriesForgotten,
  withTryCounted,
  withWaitServed,
} from '../../../src/core/gate/gate-data';

const data: GateData = {
  v: 1,
  pin: { salt: 'a', hash: 'b', rounds: 1 },
  recovery: { salt: 'c', hash: 'd', rounds: 1 },
  tries: 4,
  waitDue: false,
};

test('a wrong try is counted and owes a wait', () => {
  expect(withTryCounted(data)).toEqual({ ...data, tries: 5, waitDue: true });
});

test('serving the wait keeps the count', () => {
  expect(withWaitServed(withTryCounted(data))).toEqual({ ...data, tries: 5 });
});

test('opening forgets the tries and touches neither secret', () => {
  expect(withTriesForgotten(withTryCounted(data))).toEqual({ ...data, tries: 0 });
});
