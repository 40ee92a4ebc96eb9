import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factClass } from '../../../src/core/fact/fact-class';
import { knownFact } from '../../../src/core/fact/fact-list';
import { familyOf } from '../../../src/core/fact/family';
import { planDay } from '../../../src/core/plan/plan-day';
import type { SittingPlan } from '../../../src/core/record/sat';
import { teachingSets } from '../../../src/core/set/teaching-sets';
import { summarize } from '../../../src/core/summary/summarize';
import { onlyWrong, settings, sitStep, sitThrough, source, stepOf, tomorrow, whats } from './day';
import { type Act, ruled } from './sit';

const plain = settings({ cards: false });
const timed = settings({ cards: false, timed: true });
/** On the timed sheet the first `right` cards are right, the rest wrong; what follows is all right. */
const withRight = (right: number) => (plan: SittingPlan, showing: number) =>
  plan.purpose === 'sheet' && showing >= right ? ('wrong' as const) : ('right' as const);
const afterSheet = (sat: readonly string[]) => sat.slice(sat.indexOf('sheet') + 1);

describe('extra rows (common practice, no source)', () => {
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

  test('come before the mending and its twins, never with a clock', () => {
    const { sat, source: after } = sitThrough(source({ settings: timed }), withRight(12));
    expect(afterSheet(sat)).toEqual(['row', 'mending', 'twin', 'practice']);
    const row = after.sittings.find(({ sat: { purpose } }) => purpose === 'row');
    expect(row?.sat.clock).toBeNull();
  });

  test('an untimed sheet brings none, however it went', () => {
    expect(sitThrough(source({ settings: plain }), withRight(3)).sat).not.toContain('row');
  });

  test('wait for the parent where she wants to send them, and the day ends without her', () => {
    const {
      sat,
      day,
      source: done,
    } = sitThrough(source({ settings: { ...timed, rowsSent: 'parent' } }), withRight(12));
    expect(sat).not.toContain('row');
    expect(day.isDone).toBe(true);
    expect(day.needs).toContainEqual({ what: 'rowsWaiting', sitting: expect.any(String), rows: 1 });
    const sittings = done.sittings.map((one) =>
      one.sat.purpose === 'sheet' ? ruled(one.sat, { rows: 1 }) : one,
    );
    const sent = sitThrough({ ...done, sittings }, (plan) => (plan.purpose === 'row' ? 'wrong' : 'right'));
    expect(sent.sat.slice(0, 2)).toEqual(['row', 'mending']);
  });

  test('waived, or handed to another day, are not asked for', () => {
    const first = sitThrough(source({ settings: timed, change: { later: ['rows'] } }), withRight(9));
    expect(first.sat).not.toContain('row');
    const sittings = first.source.sittings.map(({ sat }) =>
      ruled(sat, sat.purpose === 'sheet' ? { rows: 0 } : {}),
    );
    expect(whats(planDay({ ...first.source, change: {}, sittings }))).toEqual(['piece']);
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
    const { day, source: after } = sitThrough(source({ settings: plain }), (plan, showing) =>
      plan.purpose === 'sheet' && showing < 3 ? 'wrong' : 'right',
    );
    const mending = after.sittings.find(({ sat }) => sat.purpose === 'mending');
    expect(new Set(mending?.sat.prompts).size).toBe(mending?.sat.prompts.length);
    expect(day.isDone).toBe(true);
    expect(day.sheets[0]?.toMend).toEqual([]);
  });

  test('shows what the child had given, and nothing for a fact skipped', () => {
    let now = source({ settings: plain });
    for (const what of ['practice', 'firstTry', 'sheet'] as const)
      now = sitStep(now, stepOf(planDay(now), what).plan, (showing) =>
        what === 'sheet' ? (showing === 1 ? 'wrong' : 'skip') : 'right',
      );
    const { gave } = stepOf(planDay(now), 'mending');
    expect(gave.filter((one) => one !== null)).toEqual([expect.stringMatching(/^\d+$/)]);
    expect(gave).toContain(null);
  });

  test('passed over twice, or broken off twice, waits for tomorrow, and the day is done', () => {
    for (const act of ['skip', 'leave'] as const) {
      const { day, source: after } = sitThrough(source({ settings: plain }), (plan, showing) => {
        if (plan.purpose === 'mending' && !plan.twinOf) return act;
        return plan.purpose === 'sheet' && showing === 0 ? 'wrong' : 'right';
      });
      expect(day.isDone).toBe(true);
      const next = planDay({ ...after, today: tomorrow });
      expect(whats(next)).toEqual(['mending', 'sheet', 'piece']);
      const sheet = after.sittings.find(({ sat }) => sat.purpose === 'sheet');
      expect(stepOf(next, 'mending').plan.of).toBe(sheet?.sat.id);
    }
  });

  test('handed to another day begins that one, its twins with it', () => {
    const { sat, source: after } = sitThrough(
      source({ settings: plain, change: { later: ['mending'] } }),
      onlyWrong('sheet', [0]),
    );
    expect(sat).not.toContain('mending');
    const next = planDay({ ...after, change: {}, today: tomorrow });
    expect(whats(next).slice(0, 3)).toEqual(['mending', 'twin', 'sheet']);
  });
});

describe('twins (common practice, no source)', () => {
  test('follow each miscalculation once, a slip or a skipped fact never', () => {
    const { source: after } = sitThrough(
      source({ settings: plain, change: { later: ['mending'] } }),
      (plan, _, place) =>
        plan.purpose !== 'sheet' ? 'right' : place < 2 ? 'wrong' : place === 2 ? 'skip' : 'right',
    );
    const sheet = after.sittings.find(({ sat }) => sat.purpose === 'sheet');
    const [first, second] = sheet?.sat.prompts ?? [];
    expect(stepOf(planDay({ ...after, change: {} }), 'twin').plan.twinOf).toEqual([first, second]);
    const sittings = after.sittings.map(({ sat }) =>
      ruled(sat, sat === sheet?.sat ? { slips: new Map([[0, true]]) } : {}),
    );
    const slip = planDay({ ...after, change: {}, sittings, summary: summarize(sittings) });
    expect(stepOf(slip, 'twin').plan.twinOf).toEqual([second]);
    expect(stepOf(slip, 'mending').plan.prompts).toHaveLength(3);
  });

  test('are never of the same family and always of the same kind, whatever set and misses', () => {
    const sets = fc.constantFrom(...teachingSets.filter(({ facts }) => facts.length > 5));
    fc.assert(
      fc.property(sets, fc.uniqueArray(fc.nat(24), { maxLength: 12 }), (set, wrong) => {
        const from = source({ set, settings: plain, change: { later: ['firstTry'] } });
        const { source: after, day } = sitThrough(from, onlyWrong('sheet', wrong));
        const twins = after.sittings.filter(({ sat }) => sat.twinOf).map(({ sat }) => sat);
        const missed = day.sheets.flatMap(({ marked }) =>
          marked.places.filter(({ outcome }) => outcome === 'wrong').map(({ prompt }) => prompt),
        );
        expect(new Set(twins.flatMap(({ twinOf }) => twinOf))).toEqual(new Set(missed));
        for (const { twinOf = [], prompts } of twins)
          for (const [place, of] of twinOf.entries()) {
            const [fact, twin] = [knownFact(of), knownFact(prompts[place] ?? '')];
            if (!fact || !twin) throw new Error('no fact');
            expect([twin.op, factClass(twin)]).toEqual([fact.op, factClass(fact)]);
            expect(familyOf(fact).map(({ id }) => id)).not.toContain(twin.id);
          }
      }),
      { numRuns: 40 },
    );
  });
});

describe('gap lines', () => {
  test('come once a day where the parent wants them, after the mending', () => {
    const { sat } = sitThrough(source({ settings: { ...plain, gapLines: true } }), onlyWrong('sheet', [1]));
    expect(afterSheet(sat)).toEqual(['mending', 'twin', 'lines', 'practice']);
    expect(sitThrough(source({ settings: plain })).sat).not.toContain('lines');
  });

  test('are one line with its questions and one story of the day’s facts', () => {
    const { source: after } = sitThrough(source({ settings: { ...plain, gapLines: true } }));
    const lines = after.sittings.find(({ sat }) => sat.purpose === 'lines')?.sat;
    expect(lines?.prompts.map((prompt) => prompt.split('-')[0])).toEqual(['line', 'line', 'line', 'story']);
    expect(lines?.onWrong).toBe('showAgain');
  });
});

describe('the day’s minutes', () => {
  const slow = 6000;
  const short = { ...plain, minutes: 6 };
  const wrongAll = ({ purpose }: SittingPlan, showing: number): Act =>
    purpose === 'sheet' || (purpose === 'mending' && showing % 2 === 0) ? 'wrong' : 'right';

  test('used up, the mending stops between two cards, the rest begins the next day, and the parent is told', () => {
    const { source: first } = sitThrough(source({ settings: short }), wrongAll, slow);
    const from = { ...first, today: tomorrow, settings: { ...plain, minutes: 3 } };
    const { day, source: after } = sitThrough(from, wrongAll, slow);
    const cut = after.sittings.filter(({ sat }) => sat.ended === 'enough');
    expect(cut.length).toBeGreaterThan(0);
    expect(day.isDone).toBe(true);
    const left = day.sheets.at(-1)?.toMend.length ?? 0;
    expect(left).toBeGreaterThan(0);
    const need = day.needs.find(({ what }) => what === 'waited');
    expect(need?.what === 'waited' && need.waits).toContainEqual({ step: 'mending', count: left });
    const next = planDay({ ...after, today: '2026-03-05' });
    expect(whats(next)[0]).toBe('mending');
    expect(stepOf(next, 'mending').plan.prompts).toHaveLength(left);
  });

  test('cut a sheet without the clock to whole rows, at least one, and leave one with the clock alone', () => {
    const { source: first } = sitThrough(source({ settings: plain }), () => 'right', slow);
    const sheet = (minutes: number, isTimed: boolean) =>
      stepOf(planDay({ ...first, today: tomorrow, settings: { ...plain, minutes, timed: isTimed } }), 'sheet')
        .plan;
    // Three days of a set have not passed: its cards are reckoned to take half as long again.
    expect(sheet(3, false).prompts).toHaveLength(15);
    expect(sheet(2, false).prompts).toHaveLength(10);
    expect(sheet(0.3, false).prompts).toHaveLength(5);
    expect(sheet(2, true).prompts).toHaveLength(25);
    expect(sheet(15, false).prompts).toHaveLength(25);
  });
});
