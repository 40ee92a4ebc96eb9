import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { activeTimes } from '../../../src/core/marking/active-time';
import type { SittingPlan } from '../../../src/core/record/sat';
import { resumeSitting } from '../../../src/core/sitting/machine';
import { type Act, sit } from '../plan/sit';

const prompts: readonly FactId[] = ['mul-2-3', 'mul-3-4', 'mul-4-5', 'mul-5-6', 'mul-6-7', 'mul-7-8'];

function plan(over: Partial<SittingPlan> = {}): SittingPlan {
  return {
    child: 'ann',
    purpose: 'mending',
    of: 'sheet-1',
    set: 'times-3',
    seed: 1,
    prompts,
    clock: null,
    takesItself: false,
    onWrong: 'showAgain',
    keepTimes: true,
    ...over,
  };
}

const day = '2026-03-02';
const all = (act: Act) => () => act;

describe('a sitting with time for so much', () => {
  test('ends with the card on which it is used up, not before and not in mid-card', () => {
    const sat = sit(plan({ enoughMs: 2500 }), day, { act: all('right'), tookMs: 1000 });
    expect(sat.ended).toBe('enough');
    expect(sat.visits.map(({ place }) => place)).toEqual([0, 1, 2]);
  });

  test('is finished as ever where the time is enough', () => {
    const sat = sit(plan({ enoughMs: 6000 }), day, { act: all('right'), tookMs: 1000 });
    expect(sat).toMatchObject({ ended: 'finished' });
    expect(sat.visits).toHaveLength(6);
  });

  test('does not end on a miss: the whole fact is written first', () => {
    const wrongFirst = (showing: number): Act => (showing % 2 === 0 ? 'wrong' : 'right');
    const sat = sit(plan({ enoughMs: 2500 }), day, { act: wrongFirst, tookMs: 1000 });
    expect(sat.ended).toBe('enough');
    expect(sat.visits.map(({ place, shown = false }) => [place, shown])).toEqual([
      [0, false],
      [0, true],
      [1, false],
      [1, true],
    ]);
  });

  test('on a timed sheet means nothing: there the bell ends it', () => {
    const clock = { allowanceMs: 2500, sight: 'thread' } as const;
    const sat = sit(plan({ purpose: 'sheet', clock, enoughMs: 1000 }), day, {
      act: all('right'),
      tookMs: 1000,
    });
    expect(sat.ended).toBe('bell');
  });

  test('taken up again after its last card, which a crash had kept from being recorded, has ended', () => {
    const sat = sit(plan({ enoughMs: 2500 }), day, { act: all('right'), tookMs: 1000 });
    expect(resumeSitting(plan({ enoughMs: 2500 }), sat.visits, []).ended).toBe('enough');
    expect(resumeSitting(plan({ enoughMs: 2500 }), sat.visits.slice(0, 2), []).ended).toBeNull();
    expect(resumeSitting(plan({ enoughMs: 2500 }), sat.visits, []).visits).toEqual(sat.visits);
  });

  test('never goes on past its time by more than one fact', () => {
    const acts = fc.array(fc.constantFrom<Act>('right', 'right', 'wrong', 'skip'), {
      minLength: 9,
      maxLength: 9,
    });
    fc.assert(
      fc.property(
        acts,
        fc.integer({ min: 400, max: 4000 }),
        fc.integer({ min: 1, max: 20_000 }),
        (script, tookMs, enoughMs) => {
          const act = (showing: number): Act =>
            showing % 9 === 8 ? 'right' : (script[showing % 9] ?? 'right');
          const sat = sit(plan({ enoughMs }), day, { act, tookMs });
          const times = activeTimes(sat);
          const isLast = (index: number) => sat.visits[index + 1]?.place !== sat.visits[index]?.place;
          const before = times.filter((_, index) => isLast(index) && index < sat.visits.length - 1);
          for (const ms of before) expect(ms).toBeLessThan(enoughMs);
          if (sat.ended === 'enough') expect(times.at(-1)).toBeGreaterThanOrEqual(enoughMs);
        },
      ),
      { numRuns: 100 },
    );
  });
});
