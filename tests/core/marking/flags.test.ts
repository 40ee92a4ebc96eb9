import { describe, expect, test } from 'vitest';
import { flagsOf } from '../../../src/core/marking/flags';
import { planOf, Sitter } from '../sitting/sitter';
import { facts, sit } from './made-sat';

const calm = { longSilence: false, mashing: false };

describe('a long silence', () => {
  test.each([
    [19_999, false],
    [20_000, true],
  ])('%d ms on a card without a key', (silence, flag) => {
    const sat = new Sitter(planOf(['add-6-2', 'add-2-2'])).answer('8', 1000, 1000 + silence, 'done').sat();
    expect(flagsOf(sat)).toEqual({ ...calm, longSilence: flag });
  });

  test('between two keys counts as well, a slow but busy card does not', () => {
    const between = new Sitter(planOf(['mul-7-8']))
      .shown(1000)
      .key('5', 2000)
      .key('6', 22_000)
      .key('done', 23_000);
    expect(flagsOf(between.sat())?.longSilence).toBe(true);
    const busy = new Sitter(planOf(['mul-7-8']))
      .shown(1000)
      .key('5', 15_000)
      .key('6', 30_000)
      .key('done', 45_000);
    expect(flagsOf(busy.sat())?.longSilence).toBe(false);
  });

  test('before an interruption, or while away, is no silence', () => {
    const sitter = new Sitter(planOf(['add-6-2'])).shown(1000).left(40_000).returned(90_000);
    expect(flagsOf(sitter.answer('8', 90_017, 91_000, 'done').sat())).toEqual(calm);
  });
});

describe('mashing', () => {
  const quick = (count: number, firstKeyMs: number) => {
    const sitter = new Sitter(planOf(facts(8)));
    for (let n = 0; n < 8; n += 1) {
      const onset = 1000 + n * 3000;
      const first = onset + (n < count ? firstKeyMs : 1500);
      sitter
        .shown(onset)
        .key('9', first)
        .key('done', first + 900);
    }
    return flagsOf(sitter.sat());
  };

  test('five answers running with the first key under 300 ms', () => {
    expect(quick(5, 299)).toEqual({ ...calm, mashing: true });
    expect(quick(4, 299)).toEqual(calm);
    expect(quick(8, 300)).toEqual(calm);
  });

  test('a slower answer between them breaks the run', () => {
    const sitter = new Sitter(planOf(facts(9)));
    for (let n = 0; n < 9; n += 1) {
      const first = 1000 + n * 3000 + (n === 4 ? 1500 : 270);
      sitter
        .shown(1000 + n * 3000)
        .key('9', first)
        .key('done', first + 900);
    }
    expect(flagsOf(sitter.sat())).toEqual(calm);
  });

  test.each([
    [999, true],
    [1000, false],
  ])('eight keys within %d ms: %s', (span, flag) => {
    const sitter = new Sitter(planOf(['mul-7-8'])).shown(1000);
    for (let n = 0; n < 8; n += 1) sitter.key('5', 2000 + (n * span) / 7);
    expect(flagsOf(sitter.key('done', 9000).sat())).toEqual({ ...calm, mashing: flag });
  });

  test('keys that came too late for their card count among the eight', () => {
    const sitter = new Sitter(planOf(['mul-7-8', 'mul-6-7'])).shown(1000).key('5', 2000).key('done', 2050);
    for (let n = 0; n < 6; n += 1) sitter.key('7', 2060 + n * 20);
    expect(flagsOf(sitter.stopped(9000).sat())?.mashing).toBe(true);
  });
});

test('an ordinary sheet has no flag; one without times cannot have any', () => {
  expect(
    flagsOf(
      sit(
        facts(10),
        Array.from({ length: 10 }, () => 'right' as const),
      ),
    ),
  ).toEqual(calm);
  expect(flagsOf(sit(facts(2), ['right', 'right'], { keepTimes: false }))).toBeNull();
});
