import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { markSat } from '../../../src/core/marking/mark-sat';
import type { MarkedPlace } from '../../../src/core/marking/marked';
import { missesToMend } from '../../../src/core/marking/mend';
import { nextRow, rowsFor } from '../../../src/core/marking/rows';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import { type PaperMark, paperSat } from '../../../src/core/paper/paper-sat';
import type { Sat, SittingPlan } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { setById } from '../../../src/core/set/teaching-sets';
import { answerOf } from '../../../src/core/sitting/answer';
import { summarize } from '../../../src/core/summary/summarize';
import { emptySummary } from '../../../src/core/summary/summary';
import { satOf, stamped, visit } from '../household/made-records';

const facts = setById('times-7')?.facts ?? [];
const { limits, rows } = defaultChildSettings;

interface Made {
  readonly prompts: readonly FactId[];
  readonly reached: number;
  readonly marks: ReadonlyMap<number, PaperMark>;
  readonly timed: boolean;
}

const mark: fc.Arbitrary<PaperMark> = fc.oneof(
  { weight: 5, arbitrary: fc.constant<PaperMark>({ is: 'right' }) },
  fc.constantFrom<PaperMark>({ is: 'wrong', given: '9999' }, { is: 'wrong', given: null }, { is: 'blank' }),
);

const made: fc.Arbitrary<Made> = fc.integer({ min: 1, max: 20 }).chain((count) =>
  fc.record({
    prompts: fc.array(fc.constantFrom(...facts), { minLength: count * 5, maxLength: count * 5 }),
    reached: fc.nat(count * 5),
    marks: fc.array(mark, { maxLength: count * 5 }).map((all) => new Map(all.entries())),
    timed: fc.boolean(),
  }),
);

const start = { day: '2026-03-02', offsetMin: 60, zone: 'Europe/Paris', startedAt: 1_772_406_000_000 };

function planOf({ prompts, timed }: Made): SittingPlan {
  return {
    child: 'ann',
    purpose: 'sheet',
    of: null,
    set: 'times-7',
    seed: 4829,
    prompts,
    clock: timed ? { allowanceMs: 45_000, sight: 'hidden' } : null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: true,
  };
}

function onPaper(sheet: Made, over: Partial<Sat> = {}): Sat {
  return { ...paperSat(planOf(sheet), sheet, start), ...stamped(1, { id: 'p' }), ...over };
}

/** The same answers keyed on a screen, a second and a half each. */
function onScreen(sheet: Made): Sat {
  const given = (place: number): string | null => {
    const one = sheet.marks.get(place) ?? { is: 'right' };
    if (one.is === 'blank') return null;
    return one.is === 'right' ? String(answerOf(sheet.prompts[place])) : (one.given ?? '8888');
  };
  const answers = sheet.prompts.map((fact): readonly [FactId, string | null] => [fact, null]);
  return satOf('ann', start.day, 1, answers, {
    ...planOf(sheet),
    visits: Array.from({ length: sheet.reached }, (_, place) => visit(place, given(place), place * 1700)),
    ended: sheet.reached === sheet.prompts.length ? 'finished' : sheet.timed ? 'bell' : 'enough',
  });
}

const markOf = (sat: Sat) => markSat(sat, noRulings, limits);
const timeless = ({ given: _, firstKeyMs: _f, tookMs: _t, atMs: _a, ...place }: MarkedPlace) => place;

describe('a paper sitting', () => {
  test('marks like the same answers sat on the screen: places, counts, band', () => {
    fc.assert(
      fc.property(made, (sheet) => {
        const [paper, screen] = [markOf(onPaper(sheet)), markOf(onScreen(sheet))];
        expect(paper.places.map(timeless)).toEqual(screen.places.map(timeless));
        for (const count of ['right', 'wrong', 'skipped', 'notReached', 'reached', 'rightByBell'] as const)
          expect(paper[count]).toBe(screen[count]);
        expect([paper.band, paper.noBand, paper.interrupted]).toEqual([
          screen.band,
          screen.noBand,
          screen.interrupted,
        ]);
      }),
    );
  });

  test('brings the same misses to mend, and rows of missed, then not reached, in the order of the sheet', () => {
    fc.assert(
      fc.property(made, (sheet) => {
        const [paper, screen] = [markOf(onPaper(sheet)), markOf(onScreen(sheet))];
        const missed = (sat: typeof paper) => missesToMend(sat, []).map(({ fact }) => fact);
        expect(missed(paper)).toEqual(missed(screen));
        expect(rowsFor(paper.band, rows)).toBe(rowsFor(screen.band, rows));
        expect(nextRow(paper, [], 1)).toEqual(nextRow(withoutTimes(screen), [], 1));
      }),
    );
  });

  test('holds no time, no rate and no flag, and no number that is none', () => {
    fc.assert(
      fc.property(made, (sheet) => {
        const sat = onPaper(sheet);
        const { factsPerMin, digitsPerMin, medianMs, flags, places, ...rest } = markOf(sat);
        expect([factsPerMin, digitsPerMin, medianMs, flags]).toEqual([null, null, null, null]);
        for (const { firstKeyMs, tookMs, atMs } of places)
          expect([firstKeyMs, tookMs, atMs]).toEqual([null, null, null]);
        expect(JSON.stringify({ sat, rest })).not.toMatch(/NaN/);
        expect(sat.visits.every(({ keys }) => keys.length === 0)).toBe(true);
      }),
    );
  });

  test('counts in the plan as the screen’s does, and tells nothing of hands or of what a card takes', () => {
    fc.assert(
      fc.property(made, (sheet) => {
        const ruled = (sat: Sat) => [{ sat, child: 'ann', rulings: noRulings }];
        const paper = summarize(ruled(onPaper(sheet)));
        const screen = summarize(ruled(onScreen(sheet)));
        expect({ ...paper, hands: [], cardMs: [] }).toEqual({ ...screen, hands: [], cardMs: [] });
        expect([paper.hands, paper.cardMs]).toEqual([emptySummary.hands, emptySummary.cardMs]);
      }),
    );
  });

  test('is finished when every place was come to, ends with the bell, and without a clock is broken off', () => {
    const sheet = { prompts: facts.slice(0, 10), marks: new Map(), timed: true };
    const ended = (reached: number, timed: boolean) => onPaper({ ...sheet, reached, timed }).ended;
    expect([ended(10, true), ended(10, false), ended(7, true), ended(7, false)]).toEqual([
      'finished',
      'finished',
      'bell',
      'enough',
    ]);
  });
});

function withoutTimes(marked: ReturnType<typeof markOf>): ReturnType<typeof markOf> {
  return { ...marked, places: marked.places.map((place) => ({ ...place, tookMs: null })) };
}
