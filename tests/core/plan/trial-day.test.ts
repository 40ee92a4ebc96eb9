import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Trial } from '../../../src/core/household/household';
import type { SatRulings } from '../../../src/core/marking/sat-rulings';
import { type DaySource, planDay } from '../../../src/core/plan/plan-day';
import { isTrialOn, trialDaysSat } from '../../../src/core/plan/trial-day';
import type { SittingPlan } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { setById } from '../../../src/core/set/teaching-sets';
import { resumeSummary, summarize } from '../../../src/core/summary/summarize';
import { ruled, sit } from './sit';

// The days of a trial run on here over a weekend.
const everyDay = [1, 2, 3, 4, 5, 6, 7];
const facts = setById('times-3')?.facts ?? [];
const trial: Trial = {
  id: 'trial-1',
  set: 'times-3',
  plan: 'eight',
  order: ['thread', 'noClock', 'noClock', 'thread', 'noClock', 'thread', 'thread', 'noClock'],
  isStopped: false,
};

function source(over: Partial<DaySource> = {}): DaySource {
  return {
    child: 'ann',
    today: day(0),
    settings: { ...defaultChildSettings, schoolDays: everyDay },
    change: {},
    set: { id: 'times-3', facts },
    kept: [],
    ticked: new Set(),
    spoken: [],
    sittings: [],
    summary: summarize([]),
    trial,
    spread: null,
    ...over,
  };
}

function day(nth: number): string {
  return `2026-03-${String(nth + 1).padStart(2, '0')}`;
}

function sheetOf(from: DaySource): SittingPlan {
  const step = planDay(from).steps.find(({ what }) => what === 'sheet');
  if (!step || !('plan' in step)) throw new Error('no sheet planned');
  return step.plan;
}

/** The same child the next day, after today's sheet was sat as planned. */
function nextDay(from: DaySource, rulings: Partial<SatRulings> = {}): DaySource {
  const sat = sit(sheetOf(from), from.today, { act: () => 'right' });
  const sittings = [...from.sittings, ruled(sat, rulings)];
  const nth = Number(from.today.slice(-2));
  return { ...from, today: day(nth), change: {}, sittings, summary: summarize(sittings) };
}

/** What so many school days are with the trial on: the sight of the clock, or that there is none. */
function kinds(from: DaySource, days: number): readonly string[] {
  let now = from;
  return Array.from({ length: days }, () => {
    const { clock } = sheetOf(now);
    now = nextDay(now);
    return clock?.sight ?? 'noClock';
  });
}

describe('while a trial is on', () => {
  test('each day sat is what was drawn for it, whatever the switch of the clock says', () => {
    expect(kinds(source(), 8)).toEqual(trial.order);
    const timed = { ...defaultChildSettings, schoolDays: everyDay, timed: true, sight: 'hidden' } as const;
    expect(kinds(source({ settings: timed }), 8)).toEqual(trial.order);
  });

  test('it ends by itself: then the child\u2019s own settings hold again', () => {
    expect(kinds(source(), 10).slice(8)).toEqual(['noClock', 'noClock']);
    const timed = { ...defaultChildSettings, schoolDays: everyDay, timed: true, sight: 'hidden' } as const;
    expect(kinds(source({ settings: timed }), 9).at(-1)).toBe('hidden');
  });

  test('a timed day has the child\u2019s own allowance and its thread', () => {
    const settings = {
      ...defaultChildSettings,
      schoolDays: everyDay,
      allowanceS: 70,
      sight: 'hidden',
    } as const;
    expect(sheetOf(source({ settings })).clock).toEqual({ allowanceMs: 70_000, sight: 'thread' });
  });

  test('a sheet says which day of which trial it was', () => {
    expect(sheetOf(source()).trial).toEqual({ trial: 'trial-1', day: 0 });
    expect(sheetOf(nextDay(source())).trial).toEqual({ trial: 'trial-1', day: 1 });
  });

  test('a day without a sheet moves the schedule on', () => {
    const second = nextDay(source());
    expect(sheetOf({ ...second, today: day(6) }).trial).toEqual({ trial: 'trial-1', day: 1 });
  });

  test('what the parent changes for today wins, and the day comes again', () => {
    const changed = source({ change: { timed: false } });
    expect(sheetOf(changed)).toMatchObject({ clock: null });
    expect(sheetOf(changed).trial).toBeUndefined();
    expect(sheetOf(nextDay(changed)).trial).toEqual({ trial: 'trial-1', day: 0 });
  });

  test('a change for today that asks for what was drawn anyway changes nothing', () => {
    expect(sheetOf(source({ change: { timed: true } })).trial).toEqual({ trial: 'trial-1', day: 0 });
    expect(planDay(source({ change: { timed: false } })).drawn).toEqual({
      kind: 'thread',
      sat: { trial: 'trial-1', day: 0 },
    });
  });

  test('a shorter sheet for today is a day of the trial all the same', () => {
    expect(sheetOf(source({ change: { length: 10 } })).trial).toEqual({ trial: 'trial-1', day: 0 });
  });

  test.each([{ voided: true }, { notOwnWork: true }])('a day ruled out comes again: %o', (rulings) => {
    const back = nextDay(nextDay(source()), rulings);
    expect(sheetOf(back).trial).toEqual({ trial: 'trial-1', day: 1 });
  });

  test('a sheet that another child sat is no day of it', () => {
    const sat = sit(sheetOf(source()), day(0), { act: () => 'right' });
    const moved = [{ ...ruled({ ...sat, child: 'bo' }), child: 'ann' }];
    expect(sheetOf(source({ today: day(1), sittings: moved, summary: summarize(moved) })).trial).toEqual({
      trial: 'trial-1',
      day: 0,
    });
  });

  test('the clock is not proposed, and is again when the trial is over', () => {
    let now = source();
    const proposes = () => planDay(now).needs.some(({ what }) => what === 'proposeClock');
    for (let nth = 0; nth < 8; nth += 1) {
      expect(proposes()).toBe(false);
      now = nextDay(now);
    }
    expect(proposes()).toBe(true);
  });
});

describe('a trial no longer on', () => {
  test.each([
    ['stopped early', { trial: { ...trial, isStopped: true } }],
    ['of another set', { set: { id: 'times-4', facts } }],
    ['never drawn', { trial: null }],
  ])('%s leaves the clock to the settings', (_, over) => {
    const from = source(over);
    expect(isTrialOn(from)).toBe(false);
    expect(sheetOf(from)).toMatchObject({ clock: null });
    expect(sheetOf(from).trial).toBeUndefined();
  });

  test('days of an earlier trial are no days of a new one', () => {
    const again: Trial = { ...trial, id: 'trial-2' };
    const now = { ...nextDay(source()), trial: again };
    expect(trialDaysSat(again, now.summary)).toEqual([]);
    expect(sheetOf(now).trial).toEqual({ trial: 'trial-2', day: 0 });
  });
});

test('wherever the checkpoint lies, the same day of the trial is next', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 9 }), (days, at) => {
      let now = source();
      for (let nth = 0; nth < days; nth += 1) now = nextDay(now);
      const checkpoint = summarize(now.sittings.slice(0, at));
      const tail = now.sittings.slice(at);
      expect(resumeSummary(checkpoint, tail).trial).toEqual(now.summary.trial);
    }),
    { numRuns: 30 },
  );
});
