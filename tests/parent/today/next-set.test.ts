import { expect, test } from 'vitest';
import { factsOf } from '../../../src/core/fact/fact-list';
import type { Draft } from '../../../src/core/record/record';
import { setById } from '../../../src/core/set/teaching-sets';
import { nextSet } from '../../../src/parent/today/next-set';
import { fakeDesk } from '../fake-desk';

function next(set: string, more: readonly Draft[] = []): string | undefined {
  const { household } = fakeDesk('2026-11-25', [
    { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 0 },
    { kind: 'setStarted', child: 'ann', set },
    ...more,
  ]);
  const [child] = household.value.children;
  return child && nextSet(household.value, child)?.id;
}

const ticked = (set: string): Draft => ({
  kind: 'factsTicked',
  child: 'ann',
  facts: setById(set)?.facts ?? [],
  known: true,
});

test('what follows is of the same operation, the first that holds anything new', () => {
  expect(next('times-2')).toBe('times-5');
  expect(next('times-2', [ticked('times-5')])).not.toBe('times-5');
  expect(next('times-2', [ticked('times-5')])).toMatch(/^times-/);
});

test('what comes after it goes before what was passed over', () => {
  expect(next('times-9')).not.toBe('times-2');
  expect(next('times-5')).not.toBe('times-2');
});

test('a set kept already does not come again', () => {
  expect(next('times-2', [{ kind: 'setKept', child: 'ann', set: 'times-5', kept: true }])).not.toBe(
    'times-5',
  );
});

test('after the last of an operation another one begins', () => {
  const all: Draft = {
    kind: 'factsTicked',
    child: 'ann',
    facts: factsOf('mul').map(({ id }) => id),
    known: true,
  };
  expect(next('squares', [all])).toMatch(/^plus-/);
});
