import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { planDay } from '../../../src/core/plan/plan-day';
import type { SittingPlan } from '../../../src/core/record/sat';
import { resumeSummary, summarize } from '../../../src/core/summary/summarize';
import {
  daysOf,
  kept,
  monday,
  onlyWrong,
  set,
  settings,
  sitStep,
  sitThrough,
  source,
  stepOf,
  today,
  tomorrow,
  whats,
} from './day';
import { type Act, ruled } from './sit';

const timed = settings({ timed: true });
const without = settings({ cards: false });

describe('the first day', () => {
  test('a child is told, copies numbers, tries its set, and sits an untimed sheet', () => {
    const day = planDay(source());
    expect(whats(day)).toEqual(['told', 'practice', 'firstTry', 'sheet', 'piece']);
    expect(stepOf(day, 'sheet').plan.clock).toBeNull();
    expect(stepOf(day, 'practice').plan.prompts).toHaveLength(13);
    expect(new Set(stepOf(day, 'firstTry').plan.prompts)).toEqual(new Set(set.facts));
  });

  test('what the first try missed is taught before the sheet, what it had is not', () => {
    const { sat, source: after } = sitThrough(source({ kept }), onlyWrong('firstTry', [2, 5]));
    expect(sat).toEqual(['practice', 'firstTry', 'cards', 'sheet', 'practice']);
    const tried = after.sittings.find(({ sat: { purpose } }) => purpose === 'firstTry')?.sat.prompts ?? [];
    const cards = after.sittings.find(({ sat: { purpose } }) => purpose === 'cards')?.sat;
    const fresh = cards?.shownFirst?.map((place) => cards.prompts[place]) ?? [];
    expect(new Set(fresh)).toEqual(new Set([tried[2], tried[5]]));
    expect(planDay(after).firstTry?.toTeach).toEqual([tried[2], tried[5]]);
  });

  test('is a school day whatever the week says', () => {
    expect(whats(planDay(source({ today: '2026-03-07' })))).toContain('firstTry');
  });

  test('without a set nothing is asked of the child, and the parent is told', () => {
    const day = planDay(source({ set: null }));
    expect(day.steps).toEqual([]);
    expect(day.isDone).toBe(false);
    expect(day.needs).toEqual([{ what: 'noSet' }]);
  });

  test('nobody is told twice, and the first timed sheet brings a practice of answers that take themselves', () => {
    const { source: after } = sitThrough(source({ settings: without }));
    const first = { ...after, today: tomorrow, settings: { ...timed, cards: false } };
    expect(whats(planDay(first))).toEqual(['practice', 'sheet', 'piece']);
    expect(stepOf(planDay(first), 'practice').plan.takesItself).toBe(true);
    const { source: later } = sitThrough(first);
    expect(whats(planDay({ ...later, today: '2026-03-05' }))).toEqual(['sheet', 'piece']);
  });
});

describe('a morning of a set that goes on', () => {
  test('begins with cards as the child’s choice once nothing is left to teach', () => {
    const { source: after } = sitThrough(source({ kept }));
    const day = planDay({ ...after, today: tomorrow });
    expect(whats(day)).toEqual(['cards', 'sheet', 'piece']);
    expect(stepOf(day, 'cards')).toMatchObject({ isChoice: true, fresh: [] });
  });

  test('begins with cards that are required while something of it is to be taught', () => {
    const from = source({ kept, change: { later: ['cards'] } });
    const { source: after } = sitThrough(from, (plan) => (plan.purpose === 'mending' ? 'right' : 'wrong'));
    const step = stepOf(planDay({ ...after, today: tomorrow, change: {} }), 'cards');
    expect(step.isChoice).toBe(false);
    expect(step.fresh.length).toBeGreaterThanOrEqual(2);
    expect(step.plan).toMatchObject({ onWrong: 'showAgain', clock: null, takesItself: false });
    expect(step.plan.shownFirst?.map((place) => step.plan.prompts[place])).toEqual(step.fresh);
  });

  test('has no second round, however the first one ended', () => {
    const from = { ...sitThrough(source({ kept })).source, today: tomorrow };
    const left = sitStep(from, stepOf(planDay(from), 'cards').plan, (card) => (card < 3 ? 'right' : 'leave'));
    expect(whats(planDay(left))).toEqual(['sheet', 'piece']);
  });
});

describe('what the child chose', () => {
  test('the cards passed over do not come again, and required ones are not passed over', () => {
    const { source: after } = sitThrough(source({ kept }));
    const straight = { ...after, today: tomorrow, change: { straight: true } };
    expect(whats(planDay(straight))).toEqual(['sheet', 'piece']);
    const from = source({ kept, change: { later: ['cards'] } });
    const { source: taught } = sitThrough(from, (plan) => (plan.purpose === 'mending' ? 'right' : 'wrong'));
    expect(whats(planDay({ ...taught, today: tomorrow, change: { straight: true } }))).toContain('cards');
  });

  test('what the first try said is told until the child went on, or sat what comes next', () => {
    const from = sitStep(source({ kept }), stepOf(planDay(source({ kept })), 'practice').plan);
    const { plan } = stepOf(planDay(from), 'firstTry');
    const tried = sitStep(from, plan);
    expect(planDay(tried).firstTry?.isToHear).toBe(true);
    expect(planDay({ ...tried, change: { heard: true } }).firstTry?.isToHear).toBe(false);
    const sat = sitStep(tried, stepOf(planDay(tried), 'sheet').plan);
    expect(planDay(sat).firstTry?.isToHear).toBe(false);
    expect(planDay(sitStep(from, plan, () => 'wrong')).firstTry).toMatchObject({
      yours: [],
      isToHear: false,
    });
  });
});

describe('what was heard aloud', () => {
  const days = ['02', '03', '04', '05', '06'].map((day) => `2026-03-${day}`);
  const isKept = (prompt: string): prompt is FactId => kept.some((fact) => fact === prompt);

  test('counts as met, for the facts of kept sets that come longest unseen first', () => {
    const { source: after } = sitThrough(source({ kept, settings: without }));
    const among = (spoken: typeof after.spoken) =>
      stepOf(planDay({ ...after, spoken, today: tomorrow }), 'sheet').plan.prompts.filter(isKept);
    const [first = kept[0] ?? 'mul-2-2'] = among([]);
    expect(among([{ day: today, answers: [{ fact: first, came: 'notYet' }] }])).not.toContain(first);
  });

  test('makes a look-back ask the others sooner', () => {
    const due = daysOf(source({ kept, settings: timed }), days);
    const [asked = 'mul-2-2', ...others] = kept;
    const times = (spoken: typeof due.spoken) =>
      Array.from({ length: 40 }, (_, nth) =>
        stepOf(planDay({ ...due, child: `ann-${nth}`, spoken, change: { length: 5 } }), 'sheet'),
      ).filter(({ plan }) => plan.prompts.includes(asked)).length;
    const answers = others.map((fact) => ({ fact, came: 'right' as const }));
    expect(times([{ day: '2026-03-05', answers }])).toBeGreaterThan(times([]) + 5);
  });

  test('says nothing of what is had, new or accurate', () => {
    const { source: after } = sitThrough(source({ kept }), onlyWrong('firstTry', [0, 1]));
    const answers = set.facts.map((fact) => ({ fact, came: 'right' as const }));
    const cards = (spoken: typeof after.spoken) =>
      planDay({ ...after, today: tomorrow, spoken }).steps.filter(({ what }) => what === 'cards');
    expect(cards([{ day: today, answers }])).toEqual(cards([]));
    expect(cards([])).toHaveLength(1);
  });
});

describe('a look-back', () => {
  const days = ['02', '03', '04', '05', '06'].map((day) => `2026-03-${day}`);

  test('takes the fifth sheet’s place, without the clock, the cards or the current set', () => {
    const due = daysOf(source({ kept, settings: timed }), days);
    const day = planDay(due);
    expect(whats(day)).toEqual(['sheet', 'piece']);
    const { plan } = stepOf(day, 'sheet');
    expect(plan).toMatchObject({ lookBack: true, clock: null, set: null, onWrong: 'goOn' });
    expect(plan.prompts.every((prompt) => kept.some((fact) => fact === prompt))).toBe(true);
    expect(
      stepOf(planDay({ ...due, change: { later: ['lookBack'] } }), 'sheet').plan.lookBack,
    ).toBeUndefined();
    expect(stepOf(planDay({ ...due, settings: settings({ lookBackEvery: 0 }) }), 'sheet').plan.set).toBe(
      set.id,
    );
  });

  test('waits until there is something kept', () => {
    expect(stepOf(planDay(daysOf(source(), days)), 'sheet').plan.lookBack).toBeUndefined();
  });
});

describe('today only', () => {
  test('the clock is taken away, or the sheet is shorter', () => {
    const { source: after } = sitThrough({ ...source(), today: monday, settings: timed });
    const { plan } = stepOf(planDay({ ...after, today, change: { timed: false, length: 10 } }), 'sheet');
    expect(plan).toMatchObject({ clock: null, takesItself: false });
    expect(plan.prompts).toHaveLength(10);
  });

  test('a skipped day asks nothing, and comes too late for a sheet that was sat', () => {
    const day = planDay(source({ change: { skip: true } }));
    expect(day).toMatchObject({ steps: [], isSkipped: true, again: null });
    const { source: after } = sitThrough(source());
    expect(planDay({ ...after, change: { skip: true } }).isSkipped).toBe(false);
  });

  test('a sheet handed to another day leaves the rest of the day, and comes once on the next', () => {
    const from = source({ kept, change: { later: ['sheet'] } });
    const { sat, day, source: after } = sitThrough(from, onlyWrong('firstTry', [0]));
    expect(sat).toEqual(['firstTry', 'cards']);
    expect(day.isDone).toBe(true);
    expect(
      whats(planDay({ ...after, today: tomorrow, change: {} })).filter((what) => what === 'sheet'),
    ).toHaveLength(1);
  });

  test('a first try handed on keeps its set from being taught', () => {
    const day = planDay(source({ kept, change: { later: ['firstTry'] } }));
    expect(whats(day)).toEqual(['told', 'practice', 'sheet', 'piece']);
  });
});

describe('days without school', () => {
  const saturday = '2026-03-07';

  test('ask nothing, offer a sheet, and count it like any other when it is sat', () => {
    const { source: after } = sitThrough(source({ settings: without }));
    const free = { ...after, today: saturday };
    const day = planDay(free);
    expect(day).toMatchObject({ steps: [], isFree: true, isDone: false });
    if (!day.again) throw new Error('nothing offered');
    expect(day.again.second).toBeUndefined();
    const sat = planDay(sitStep(free, day.again, (card) => (card === 0 ? 'wrong' : 'right')));
    expect(sat.isFree).toBe(false);
    expect(whats(sat)).toEqual(['mending', 'twin', 'piece']);
  });

  test('are the parent’s to set', () => {
    const { source: after } = sitThrough(source());
    const day = planDay({ ...after, today: saturday, settings: settings({ schoolDays: [6] }) });
    expect(day.isFree).toBe(false);
  });

  test('are school days by the parent’s word, for today alone', () => {
    const { source: after } = sitThrough(source({ settings: without }));
    const free = { ...after, today: saturday };
    expect(whats(planDay({ ...free, change: { school: true } }))).toEqual(['sheet', 'piece']);
    expect(planDay({ ...free, change: { school: false } }).isFree).toBe(true);
  });

  test('are not free before the first sheet: whoever begins on a weekend goes on the next day', () => {
    const first = source({ today: saturday });
    const begun = sitStep(first, stepOf(planDay(first), 'practice').plan);
    expect(whats(planDay(begun))).toContain('firstTry');
    const day = planDay({ ...begun, today: '2026-03-08' });
    expect(day.isFree).toBe(false);
    expect(whats(day)).toContain('firstTry');
    expect(whats(day)).toContain('sheet');
  });

  test('offer what is left of a spread', () => {
    const spread = { id: 'spread', ops: ['mul'] } as const;
    const { source: after } = sitThrough(source({ set: null, spread, today: saturday }));
    const day = planDay({ ...after, today: '2026-03-08' });
    expect(day).toMatchObject({ isFree: true, steps: [] });
    expect(day.again?.spread).toEqual({ spread: 'spread', part: 1 });
  });

  test('heap nothing up: after a week away what waited is let go, and one sheet is asked', () => {
    const { source: left } = sitThrough({ ...source({ settings: without }), today: monday }, (plan) =>
      plan.purpose === 'sheet' ? 'wrong' : plan.purpose === 'mending' ? 'leave' : 'right',
    );
    expect(whats(planDay({ ...left, today: '2026-03-09' }))[0]).toBe('mending');
    expect(whats(planDay({ ...left, today: '2026-03-10' }))).toEqual(['sheet', 'piece']);
  });
});

describe('one more sheet', () => {
  test('is offered when the day is done, as a second one without a band', () => {
    const { day, source: after } = sitThrough(source({ settings: { ...timed, cards: false } }));
    if (!day.again) throw new Error('nothing offered');
    expect(day.again.second).toBe(true);
    const again = planDay(sitStep(after, day.again));
    expect(again.sheets[1]?.marked.noBand).toBe('second');
  });

  test('is not offered before, nor without time for a row', () => {
    expect(planDay(source()).again).toBeNull();
    const { source: after } = sitThrough(source());
    expect(planDay({ ...after, settings: settings({ minutes: 2 }) }).again).toBeNull();
  });
});

describe('what the parent is told', () => {
  test('an accurate set has the clock proposed, not switched', () => {
    const day = planDay(
      daysOf(source({ settings: without }), ['2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05']),
    );
    expect(day.needs).toEqual([{ what: 'proposeClock' }]);
    expect(stepOf(day, 'sheet').plan.clock).toBeNull();
  });

  test('a voided sheet is as if it had not been sat', () => {
    const { source: after } = sitThrough(source());
    const sittings = after.sittings.map(({ sat }) => ruled(sat, { voided: sat.purpose === 'sheet' }));
    expect(whats(planDay({ ...after, sittings, summary: summarize(sittings) }))).toContain('sheet');
  });

  test('a sheet that was not the child’s own work is not asked again, nor mended', () => {
    const { source: after } = sitThrough(source(), (plan) =>
      plan.purpose === 'mending' ? 'leave' : 'wrong',
    );
    const sittings = after.sittings.map(({ sat }) => ruled(sat, { notOwnWork: sat.purpose !== 'practice' }));
    expect(whats(planDay({ ...after, sittings, summary: summarize(sittings) }))).toEqual(['piece']);
  });
});

describe('laws', () => {
  test('the same source plans the same day', () => {
    expect(planDay(source())).toEqual(planDay(source()));
    const { prompts } = stepOf(planDay(source({ child: 'bo' })), 'sheet').plan;
    expect(prompts).not.toEqual(stepOf(planDay(source()), 'sheet').plan.prompts);
  });

  test('whatever a child does, the day comes to its end', () => {
    const acts = fc.array(fc.constantFrom<Act>('right', 'wrong', 'skip', 'leave'), {
      minLength: 40,
      maxLength: 40,
    });
    fc.assert(
      fc.property(
        acts,
        fc.boolean(),
        fc.integer({ min: 300, max: 9000 }),
        fc.integer({ min: 1, max: 15 }),
        (script, isTimed, tookMs, minutes) => {
          let turn = 0;
          const from = source({ kept, settings: settings({ timed: isTimed, minutes, gapLines: true }) });
          // A fact is asked until it is right, so a child who is never right would sit there for ever.
          const act = (plan: SittingPlan, showing: number): Act =>
            plan.onWrong === 'showAgain' && showing % 7 === 6
              ? 'right'
              : (script[turn++ % script.length] ?? 'right');
          const { day } = sitThrough(from, act, tookMs);
          expect(day.steps.every(({ what }) => what === 'piece')).toBe(true);
          expect(day.isDone).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('the plan is the same from a checkpoint and its tail', () => {
    const { source: first } = sitThrough({ ...source({ kept }), today: monday });
    const checkpoint = summarize(first.sittings);
    const { source: second } = sitThrough({ ...first, today });
    const tail = second.sittings.filter(({ sat }) => sat.day === today);
    const next = { ...second, today: tomorrow };
    expect(planDay({ ...next, sittings: tail, summary: resumeSummary(checkpoint, tail) })).toEqual(
      planDay(next),
    );
  });
});
