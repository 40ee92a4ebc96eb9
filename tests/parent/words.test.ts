import { expect, test } from 'vitest';
import { count, sentence } from '../../src/parent/words';

test('small numbers are words, large ones figures, one is single', () => {
  expect([0, 1, 2, 10, 11].map((number) => count(number, 'row', 'rows'))).toEqual([
    'no rows',
    'one row',
    'two rows',
    'ten rows',
    '11 rows',
  ]);
});

test('a sentence begins with a capital', () => {
  expect(sentence('one row.')).toBe('One row.');
  expect(sentence('')).toBe('');
});
