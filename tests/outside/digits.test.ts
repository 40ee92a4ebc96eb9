import { describe, expect, test } from 'vitest';
import { countDigits } from '../../src/core/marking/count-digits';

// Counting digits in place from the units: Deno & Mirkin 1977, as used by Burns, VanDerHeyden & Jiban 2006,
// School Psychology Review 35, 401–418.
describe('digits correct, place by place from the units', () => {
  test.each([
    [42, '42', 2, 0],
    [42, '41', 1, 0],
    [42, '12', 1, 0],
    [42, '24', 0, 0],
    [42, '2', 1, 0],
    [42, '4', 0, 0],
    [8, '8', 1, 0],
    [12, '112', 2, 1],
    [56, '65', 0, 0],
    [144, '144', 3, 0],
    [13 + 18, '21', 1, 0],
  ])('for %d the answer %s has %d, with %d too many', (truth, given, correct, extra) => {
    expect(countDigits(truth, given)).toEqual({ correct, extra });
  });

  test('an empty answer has none, a nought in front is one too many', () => {
    expect(countDigits(42, '')).toEqual({ correct: 0, extra: 0 });
    expect(countDigits(8, '08')).toEqual({ correct: 1, extra: 1 });
  });
});

// Recomputed exactly from the tables themselves.
describe('digits available on a whole table', () => {
  const table = (from: number, op: (a: number, b: number) => number) => {
    const operands = Array.from({ length: 10 - from }, (_, n) => n + from);
    return operands.flatMap((a) => operands.map((b) => op(a, b)));
  };
  const available = (answers: readonly number[]) =>
    answers.reduce((sum, answer) => sum + countDigits(answer, String(answer)).correct, 0);

  test.each([
    ['× 0–9', 100, 158, table(0, (a, b) => a * b)],
    ['+ 0–9', 100, 145, table(0, (a, b) => a + b)],
    ['× 2–9', 64, 122, table(2, (a, b) => a * b)],
  ])('%s: %d facts, %d digits', (_, facts, digits, answers) => {
    expect([answers.length, available(answers)]).toEqual([facts, digits]);
  });
});
