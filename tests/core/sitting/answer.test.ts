import { expect, test } from 'vitest';
import { answerOf, digitsOf, isRight } from '../../../src/core/sitting/answer';

test('the answer of a fact and of a number to copy', () => {
  expect([answerOf('mul-7-8'), answerOf('div-56-7'), answerOf('copy-47')]).toEqual([56, 8, 47]);
});

test('a prompt this build does not know has no answer, and nothing is right for it', () => {
  expect(answerOf('mul-7-800000')).toBeNaN();
  expect(isRight('mul-7-800000', 'NaN')).toBe(false);
  expect(isRight(undefined, '0')).toBe(false);
  expect(digitsOf(undefined)).toBe(4);
});

test('numbers are compared, and nothing given is not nought', () => {
  expect(['0', '00', '', null].map((given) => isRight('sub-9-9', given))).toEqual([true, true, false, false]);
});

test('as many digits as the true answer has', () => {
  expect((['sub-9-9', 'mul-7-8', 'mul-12-12'] as const).map(digitsOf)).toEqual([1, 2, 3]);
});
