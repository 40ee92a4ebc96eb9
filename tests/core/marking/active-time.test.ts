import fc from 'fast-check';
import { expect, test } from 'vitest';
import { activeTimes } from '../../../src/core/marking/active-time';
import { anyMoves, anyPlan, play } from '../sitting/random-sitting';
import { planOf, Sitter, stamped } from '../sitting/sitter';

test('without an interruption it is the time since the first onset', () => {
  const sitter = new Sitter(planOf(['add-6-2', 'add-2-2'])).answer('8', 1000, 1900, 'done');
  expect(activeTimes(sitter.answer('4', 2016, 2900, 'done').sat())).toEqual([1000, 2000]);
});

test('a void card and the time away are left out, seen or not', () => {
  const sitter = new Sitter(planOf(['add-6-2', 'add-2-2', 'add-1-1'])).answer('8', 1000, 1900, 'done');
  sitter.left(2010).returned(50_000).answer('4', 50_000, 50_900, 'done');
  sitter.shown(51_016).left(58_000).returned(90_000).answer('2', 90_000, 90_900, 'done');
  expect(activeTimes(sitter.sat())).toEqual([1000, 2000, 2016, 3016]);
});

test('after the bell in active time is past the allowance, in any sitting', () => {
  fc.assert(
    fc.property(anyPlan, anyMoves, (drawn, moves) => {
      const plan = { ...drawn, keepTimes: true };
      const seenInTime = moves.filter(([, made]) => made.type !== 'shown' || made.ago === null);
      const sat = stamped(play(plan, seenInTime).end);
      const active = activeTimes(sat);
      const { clock } = sat;
      fc.pre(clock !== null);
      for (const [index, { end, afterBell }] of sat.visits.entries()) {
        const excess = (active[index] ?? 0) - (clock?.allowanceMs ?? 0);
        // Sums of many differences: to a thousandth of a microsecond they do not say which side of the bell.
        if (end === 'taken' && Math.abs(excess) > 1e-6) expect(afterBell ?? false).toBe(excess > 0);
      }
    }),
    { numRuns: 500 },
  );
}, 60_000);
