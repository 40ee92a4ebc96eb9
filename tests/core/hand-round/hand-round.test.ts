import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePrompt } from '../../../src/core/fact/prompt';
import {
  copyNumbers,
  copyRoundLength,
  isCopyRound,
  isCopyRoundDue,
} from '../../../src/core/hand-round/hand-round';

describe('a part of the hand-time round', () => {
  test('has three numbers to warm up, then five of one digit and five of two, each number once', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const prompts = copyNumbers(seed);
        expect(prompts).toHaveLength(copyRoundLength);
        expect(new Set(prompts).size).toBe(prompts.length);
        const digits = prompts.slice(3).map((prompt) => `${parsePrompt(prompt)?.answer}`.length);
        expect(digits.filter((count) => count === 1)).toHaveLength(5);
        expect(digits.filter((count) => count === 2)).toHaveLength(5);
      }),
    );
  });

  test('is the same from the same seed, and another from another', () => {
    expect(copyNumbers(7)).toEqual(copyNumbers(7));
    expect(copyNumbers(8)).not.toEqual(copyNumbers(7));
  });

  test('is told from a short practice', () => {
    expect(isCopyRound({ purpose: 'practice', prompts: copyNumbers(1) })).toBe(true);
    expect(isCopyRound({ purpose: 'practice', prompts: copyNumbers(1).slice(0, 5) })).toBe(false);
    expect(isCopyRound({ purpose: 'sheet', prompts: copyNumbers(1) })).toBe(false);
  });
});

test.each([
  ['never seen', null, true],
  ['never measured', { copied: 0, copiedOn: null }, true],
  ['measured in one part', { copied: 1, copiedOn: '2026-03-02' }, true],
  ['measured in both parts', { copied: 2, copiedOn: '2026-03-02' }, false],
  ['measured 27 days ago', { copied: 3, copiedOn: '2026-02-03' }, false],
  ['measured 28 days ago', { copied: 2, copiedOn: '2026-02-02' }, true],
])('hands %s: due %o', (_, hands, due) => {
  expect(isCopyRoundDue(hands, '2026-03-02')).toBe(due);
});
