import { describe, expect, test } from 'vitest';
import { type DaySource, planDay } from '../../../src/core/plan/plan-day';
import { isSpreadSat, nextSpreadPart } from '../../../src/core/plan/plan-spread';
import type { SittingPlan } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { setById } from '../../../src/core/set/teaching-sets';
import { summarize } from '../../../src/core/summary/summarize';
import { type Act, ruled, sit } from './sit';

const spread = { id: 'spread-1', ops: ['add'] } as const;

function source(over: Partial<DaySource> = {}): DaySource {
  return {
    child: 'ann',
    today: '2026-03-02',
    settings: defaultChildSettings,
    change: {},
    set: null,
    kept: [],
    ticked: new Set(),
    spoken: [],
    sittings: [],
    summary: summarize([]),
    trial: null,
    spread,
    ...over,
  };
}

function sheetOf(from: DaySource): SittingPlan {
  const step = planDay(from).steps.find(({ what }) => what === 'sheet');
  if (step?.what !== 'sheet') throw new Error('no sheet planned');
  return step.plan;
}

/** The day after, this one's sheet sat. */
function sitOn(from: DaySource, today: string, act: Act = 'right', rulings = {}): DaySource {
  const sittings = [...from.sittings, ruled(sit(sheetOf(from), from.today, { act: () => act }), rulings)];
  return { ...from, today, sittings, summary: summarize(sittings) };
}

describe('a spread', () => {
  test('is an untimed sheet without a set on each of two days, the halves different', () => {
    const timed = { ...defaultChildSettings, timed: true };
    const first = sheetOf(source({ settings: timed }));
    const second = sheetOf(sitOn(source({ settings: timed }), '2026-03-03'));
    for (const [part, plan] of [first, second].entries())
      expect(plan).toMatchObject({
        set: null,
        clock: null,
        takesItself: false,
        spread: { spread: 'spread-1', part },
      });
    expect(first.prompts.filter((id) => second.prompts.includes(id))).toEqual([]);
  });

  test('asks no set of the parent while it lasts, and then proposes', () => {
    expect(planDay(source()).needs).toEqual([]);
    const after = sitOn(sitOn(source(), '2026-03-03'), '2026-03-04');
    expect(planDay(after).needs).toEqual([{ what: 'spreadSat' }]);
    expect(planDay(after).steps.some(({ what }) => what === 'sheet')).toBe(false);
    expect(isSpreadSat(after)).toBe(true);
  });

  test('comes before the set a child has, which goes on after it', () => {
    const set = { id: 'plus-2', facts: setById('plus-2')?.facts ?? [] };
    expect(sheetOf(source({ set })).set).toBeNull();
    const after = sitOn(sitOn(source({ set }), '2026-03-03'), '2026-03-04');
    expect(sheetOf(after).set).toBe('plus-2');
  });

  test.each([
    ['broken off', 'leave', {}],
    ['voided', 'right', { voided: true }],
    ['ruled somebody’s help', 'right', { notOwnWork: true }],
  ] as const)('a half %s comes again', (_, act, rulings) => {
    const after = sitOn(source(), '2026-03-03', act, rulings);
    expect(nextSpreadPart(after)).toBe(0);
    expect(sheetOf(after).prompts).toEqual(sheetOf(source()).prompts);
  });

  test('asked for anew begins anew', () => {
    const after = sitOn(source(), '2026-03-03');
    expect(nextSpreadPart(after)).toBe(1);
    expect(nextSpreadPart({ ...after, spread: { id: 'spread-2', ops: ['mul'] } })).toBe(0);
  });

  test('its misses are mended the same day, like any sheet’s', () => {
    const after = sitOn(source(), '2026-03-02', 'wrong');
    const mending = planDay(after).steps.find(({ what }) => what === 'mending');
    expect(mending?.what === 'mending' && mending.plan.set).toBeNull();
    expect(planDay(after).steps.some(({ what }) => what === 'sheet')).toBe(false);
  });
});
