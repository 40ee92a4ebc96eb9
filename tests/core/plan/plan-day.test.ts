import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ChildDay, type DaySource, planDay } from '../../../src/core/plan/plan-day';
import type { Step } from '../../../src/core/plan/step';
import type { SittingPlan } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { teachingSets } from '../../../src/core/set/teaching-sets';
import { resumeSummary, summarize } from '../../../src/core/summary/summarize';
import { type Act, ruled, sit } from './sit';

const today = '2026-03-03';
const yesterday = '2026-03-02';
const set = teachingSets.find(({ id }) => id === 'times-3') ?? teachingSets[0];
if (!set) throw new Error('no teaching sets');

function source(over: Partial<DaySource> = {}): DaySource {
  const sittings = over.sittings ?? [];
  return {
    child: 'ann',
    today,
    settings: defaultChildSettings,
    change: {},
    set: { id: set?.id ?? '', facts: set?.facts ?? [] },
    kept: [],
    ticked: new Set(),
    lastSpoken: null,
    sittings,
    summary: summarize(sittings),
    trial: null,
    spread: null,
    ...over,
  };
}

const timed: DaySource['settings'] = { ...defaultChildSettings, timed: true };

function whats(day: ChildDay): readonly Step['what'][] {
  return day.steps.map(({ what }) => what);
}

function planOf(day: ChildDay, what: Step['what']): SittingPlan {
  const step = day.steps.find((other) => other.what === what);
  if (!step || !('plan' in step)) throw new Error(`no ${what} planned`);
  return step.plan;
}

/** Sits today's steps as they come, `act` saying how each sheet, row or mending goes, until the day is done. */
function sitThrough(from: DaySource, act: (plan: SittingPlan, showing: number) => Act, tookMs = 1500) {
  let now = from;
  const sat: Step['what'][] = [];
  for (let steps = 0; steps < 20; steps += 1) {
    const step = planDay(now).steps.find((other) => 'plan' in other);
    if (!step || !('plan' in step)) break;
    sat.push(step.what);
    const { plan } = step;
    const record = sit(plan, now.today, { act: (showing) => act(plan, showing), tookMs });
    const sittings = [...now.sittings, ruled(record)];
    now = { ...now, sittings, summary: summarize(sittings) };
  }
  return { sat, day: planDay(now), source: now };
}

const allRight = () => 'right' as const;

describe('the first day', () => {
  test('a child is told, practises the keys, and sits an untimed sheet', () => {
    const day = planDay(source());
    expect(whats(day)).toEqual(['told', 'practice', 'sheet', 'piece']);
    expect(planOf(day, 'sheet').clock).toBeNull();
    expect(planOf(day, 'practice').prompts).toHaveLength(5);
  });

  test('without a set nothing is asked of the child, and the parent is told', () => {
    const day = planDay(source({ set: null }));
    expect(day.steps).toEqual([]);
    expect(day.isDone).toBe(false);
    expect(day.needs).toEqual([{ what: 'noSet' }]);
  });

  test('a child is told when there is first something to sit, also if a set comes later', () => {
    expect(whats(planDay(source({ change: { skip: true } })))).toEqual([]);
    expect(whats(planDay(source({ today: '2026-03-04' })))).toContain('told');
  });

  test('nobody is told twice or practises the same keys twice', () => {
    const { source: after } = sitThrough(source(), allRight);
    const tomorrow = planDay({ ...after, today: '2026-03-04' });
    expect(whats(tomorrow)).toEqual(['sheet', 'piece']);
  });

  test('the first timed sheet brings a practice of answers that take themselves, later ones none', () => {
    const { source: after } = sitThrough(source(), allRight);
    const first = planDay({ ...after, today: '2026-03-04', settings: timed });
    expect(whats(first)).toEqual(['practice', 'sheet', 'piece']);
    expect(planOf(first, 'practice').takesItself).toBe(true);
    const { source: later } = sitThrough({ ...after, today: '2026-03-04', settings: timed }, allRight);
    expect(whats(planDay({ ...later, today: '2026-03-05' }))).toEqual(['sheet', 'piece']);
  });
});

describe('extra rows (common practice, no source)', () => {
  /** On the timed sheet the first `right` cards are right, the rest wrong; what follows is all right. */
  const withRight = (right: number) => (plan: SittingPlan, showing: number) =>
    plan.purpose === 'sheet' && showing >= right ? ('wrong' as const) : ('right' as const);

  test.each([
    [25, 0],
    [20, 0],
    [19, 0],
    [15, 0],
    [14, 1],
    [10, 1],
    [9, 2],
    [0, 2],
  ])('%i right by the bell bring %i rows', (right, rows) => {
    const { sat } = sitThrough(source({ settings: timed }), withRight(right));
    expect(sat.filter((what) => what === 'row')).toHaveLength(rows);
  });

  test('come before the mending, never with a clock', () => {
    const { sat, source: after } = sitThrough(source({ settings: timed }), withRight(12));
    expect(sat).toEqual(['practice', 'sheet', 'row', 'mending']);
    const row = after.sittings.find(({ sat: { purpose } }) => purpose === 'row');
    expect(row?.sat.clock).toBeNull();
  });

  test('an untimed sheet brings none, however it went', () => {
    const { sat } = sitThrough(source(), withRight(3));
    expect(sat).toEqual(['practice', 'sheet', 'mending']);
  });

  test('wait for the parent where she wants to send them, and the day ends without her', () => {
    const settings = { ...timed, rowsSent: 'parent' } as const;
    const { sat, day } = sitThrough(source({ settings }), withRight(12));
    expect(sat).toEqual(['practice', 'sheet', 'mending']);
    expect(day.isDone).toBe(true);
    expect(day.needs).toContainEqual({ what: 'rowsWaiting', sitting: expect.any(String), rows: 1 });
  });

  test('once sent are sat, and what they miss is mended', () => {
    const settings = { ...timed, rowsSent: 'parent' } as const;
    const { source: done } = sitThrough(source({ settings }), withRight(12));
    const sittings = done.sittings.map((one) =>
      one.sat.purpose === 'sheet' ? ruled(one.sat, { rows: 1 }) : one,
    );
    const { sat } = sitThrough({ ...done, sittings }, (plan) => (plan.purpose === 'row' ? 'wrong' : 'right'));
    expect(sat).toEqual(['row', 'mending']);
  });

  test('waived are not asked for', () => {
    const first = sitThrough(source({ settings: timed }), withRight(9));
    const sheet = first.source.sittings.find(({ sat }) => sat.purpose === 'sheet');
    const practice = first.source.sittings.find(({ sat }) => sat.purpose === 'practice');
    if (!sheet || !practice) throw new Error('nothing sat');
    const sittings = [practice, ruled(sheet.sat, { rows: 0 })];
    const day = planDay(source({ settings: timed, sittings, summary: summarize(sittings) }));
    expect(whats(day)).toEqual(['mending', 'piece']);
  });

  test('that do not come go on for two more, then the parent is told', () => {
    const { sat, day } = sitThrough(source({ settings: timed }), (plan) =>
      plan.purpose === 'sheet' || plan.purpose === 'row' ? 'wrong' : 'right',
    );
    expect(sat.filter((what) => what === 'row')).toHaveLength(4);
    expect(day.needs).toContainEqual({ what: 'rowsStopped', sitting: expect.any(String) });
    expect(day.isDone).toBe(true);
  });
});

describe('mending', () => {
  test('asks for each missed fact once and closes when it is right', () => {
    const { day, source: after } = sitThrough(source(), (plan, showing) =>
      plan.purpose === 'sheet' && showing < 3 ? 'wrong' : 'right',
    );
    const mending = after.sittings.find(({ sat }) => sat.purpose === 'mending');
    expect(new Set(mending?.sat.prompts).size).toBe(mending?.sat.prompts.length);
    expect(day.isDone).toBe(true);
    expect(day.sheets[0]?.toMend).toEqual([]);
  });

  test('shows what the child had given, and nothing for a fact skipped', () => {
    const { day } = sitThrough(source(), (plan, showing) => {
      if (plan.purpose === 'mending') return 'leave';
      if (plan.purpose !== 'sheet') return 'right';
      return showing === 1 ? 'wrong' : 'skip';
    });
    const step = day.steps.find(({ what }) => what === 'mending');
    if (step?.what !== 'mending') throw new Error('no mending planned');
    expect(step.gave.filter((gave) => gave !== null)).toEqual([expect.stringMatching(/^\d+$/)]);
    expect(step.gave).toContain(null);
  });

  test('passed over twice waits for tomorrow, and the day is done', () => {
    const {
      sat,
      day,
      source: after,
    } = sitThrough(source(), (plan, showing) => {
      if (plan.purpose === 'mending') return 'skip';
      return plan.purpose === 'sheet' && showing === 0 ? 'wrong' : 'right';
    });
    expect(sat).toEqual(['practice', 'sheet', 'mending']);
    expect(day.isDone).toBe(true);
    expect(whats(planDay({ ...after, today: '2026-03-04' }))).toEqual(['mending', 'sheet', 'piece']);
  });

  test('that had to wait begins the next day, before its sheet', () => {
    const { source: left } = sitThrough({ ...source(), today: yesterday }, (plan, showing) => {
      if (plan.purpose === 'mending') return 'leave';
      return plan.purpose === 'sheet' && showing === 0 ? 'wrong' : 'right';
    });
    const day = planDay({ ...left, today });
    expect(whats(day)).toEqual(['mending', 'sheet', 'piece']);
    expect(planOf(day, 'mending').of).toBe(left.sittings.find(({ sat }) => sat.purpose === 'sheet')?.sat.id);
  });
});

describe('today only', () => {
  test('the clock is taken away, or the sheet is shorter', () => {
    const { source: after } = sitThrough({ ...source(), today: yesterday, settings: timed }, allRight);
    const plain = planOf(planDay({ ...after, today, change: { timed: false, length: 10 } }), 'sheet');
    expect(plain.clock).toBeNull();
    expect(plain.takesItself).toBe(false);
    expect(plain.prompts).toHaveLength(10);
  });

  test('a skipped day asks nothing', () => {
    const day = planDay(source({ change: { skip: true } }));
    expect(day.steps).toEqual([]);
    expect(day.isSkipped).toBe(true);
  });

  test('skipping comes too late for a sheet that was sat', () => {
    const { source: after } = sitThrough(source(), allRight);
    expect(planDay({ ...after, change: { skip: true } }).isSkipped).toBe(false);
  });
});

describe('what the parent is told', () => {
  test('an accurate set has the clock proposed, not switched', () => {
    let now = source();
    for (const day of ['2026-03-02', '2026-03-03', '2026-03-04'])
      now = sitThrough({ ...now, today: day }, allRight).source;
    const day = planDay({ ...now, today: '2026-03-05' });
    expect(day.needs).toEqual([{ what: 'proposeClock' }]);
    expect(planOf(day, 'sheet').clock).toBeNull();
  });

  test('a voided sheet is as if it had not been sat', () => {
    const { source: after } = sitThrough(source(), allRight);
    const sittings = after.sittings.map(({ sat }) => ruled(sat, { voided: sat.purpose === 'sheet' }));
    expect(whats(planDay({ ...after, sittings, summary: summarize(sittings) }))).toContain('sheet');
  });
});

describe('laws', () => {
  test('the same source plans the same day', () => {
    expect(planDay(source())).toEqual(planDay(source()));
    expect(planOf(planDay(source({ child: 'bo' })), 'sheet').prompts).not.toEqual(
      planOf(planDay(source()), 'sheet').prompts,
    );
  });

  test('whatever a child does, the day comes to its end', () => {
    const acts = fc.array(fc.constantFrom<Act>('right', 'wrong', 'skip'), { minLength: 40, maxLength: 40 });
    fc.assert(
      fc.property(acts, fc.boolean(), fc.integer({ min: 300, max: 4000 }), (script, isTimed, tookMs) => {
        let turn = 0;
        const settings = isTimed ? timed : defaultChildSettings;
        // Mending asks until it is right, so a child who is never right would sit there for ever.
        const { day } = sitThrough(
          source({ settings }),
          (plan, showing) =>
            plan.purpose === 'mending' && showing > 30
              ? 'right'
              : (script[turn++ % script.length] ?? 'right'),
          tookMs,
        );
        expect(day.isDone).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  test('the plan is the same from a checkpoint and its tail', () => {
    const { source: first } = sitThrough({ ...source(), today: yesterday }, allRight);
    const checkpoint = summarize(first.sittings);
    const { source: second } = sitThrough({ ...first, today }, allRight);
    const tail = second.sittings.filter(({ sat }) => sat.day === today);
    const next = { ...second, today: '2026-03-04' };
    expect(planDay({ ...next, sittings: tail, summary: resumeSummary(checkpoint, tail) })).toEqual(
      planDay(next),
    );
  });
});
