import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parsePrompt } from '../../../src/core/fact/prompt';

test('a fact is a prompt that asks for its answer', () => {
  expect(parsePrompt('sub-12-5')).toEqual({
    kind: 'fact',
    id: 'sub-12-5',
    fact: { id: 'sub-12-5', op: 'sub', a: 12, b: 5, answer: 7 },
    answer: 7,
  });
});

test('a number to copy is a prompt that asks for itself', () => {
  fc.assert(
    fc.property(fc.nat({ max: 999 }), (number) => {
      const id = `copy-${number}`;
      expect(parsePrompt(id)).toEqual({ kind: 'copy', id, answer: number });
    }),
  );
});

test.each(['copy-', 'copy-007', 'copy-1000', 'copy--1', 'copy-4.5', 'copy-47 ', 'div-1-0', 'add-1', ''])(
  '"%s" is no prompt',
  (id) => {
    expect(parsePrompt(id)).toBeNull();
  },
);
