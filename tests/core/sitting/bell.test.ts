import { describe, expect, test } from 'vitest';
import type { Visit } from '../../../src/core/record/sat';
import { leftAfter, reckonBell } from '../../../src/core/sitting/bell';
import { planOf, timed } from './sitter';

const visit = (onsetMs: number | null, endMs: number | null, end: Visit['end'] = 'taken'): Visit => ({
  place: 0,
  onsetMs,
  onsetBy: 'element',
  keys: [],
  end,
  endMs,
  given: end === 'taken' ? '8' : null,
  took: end === 'taken' ? 'itself' : null,
});
const plan = timed(['add-6-2', 'add-2-2']);
const away = (afterVisits: number) => ({ why: 'hidden', fromMs: 0, toMs: 0, afterVisits }) as const;

describe('the bell from closed visits', () => {
  test('before any card the whole allowance is left', () => {
    expect(reckonBell(plan, [], [])).toEqual({ firstOnsetMs: null, bellAtMs: null, leftMs: 45_000 });
    expect(reckonBell(planOf(['add-6-2']), [], []).leftMs).toBeNull();
  });

  test('is the first onset plus the allowance', () => {
    const bell = reckonBell(plan, [visit(1000, 2000), visit(2017, 3000)], []);
    expect(bell).toEqual({ firstOnsetMs: 1000, bellAtMs: 46_000, leftMs: null });
  });

  test('a void first card gives all of its time back', () => {
    const visits = [visit(1000, 9000, 'left'), visit(60_000, 61_000)];
    expect(reckonBell(plan, visits, [away(1)]).bellAtMs).toBe(105_000);
  });

  test('what is left counts from the void card’s onset, or from the last answer where none was seen', () => {
    expect(leftAfter(46_000, visit(2017, 9000, 'left'), true)).toBe(43_983);
    expect(leftAfter(46_000, visit(1000, 2000), true)).toBe(44_000);
    expect(leftAfter(46_000, visit(1000, 2000), false)).toBeNull();
    expect(reckonBell(plan, [visit(1000, 2000), visit(9000, 9500)], [away(1)]).bellAtMs).toBe(53_000);
  });

  test('without times it is unknown', () => {
    expect(reckonBell(plan, [visit(null, null)], [])).toEqual({
      firstOnsetMs: null,
      bellAtMs: null,
      leftMs: null,
    });
  });
});
