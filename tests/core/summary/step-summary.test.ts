import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import type { RuledSat } from '../../../src/core/household/history';
import type { Outcome } from '../../../src/core/marking/marked';
import { noRulings, type SatRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat } from '../../../src/core/record/sat';
import { type MarkedAnswer, stepSummary } from '../../../src/core/summary/step-summary';
import { emptySummary, type Summary } from '../../../src/core/summary/summary';
import { satOf } from '../household/made-records';

const monday = '2026-03-02';
const tuesday = '2026-03-03';
const clock = { allowanceMs: 45_000, sight: 'thread' } as const;

function ruledSat(day: string, over: Partial<Sat> = {}, rulings: Partial<SatRulings> = {}): RuledSat {
  return { sat: satOf('ann', day, 1, [], over), child: 'ann', rulings: { ...noRulings, ...rulings } };
}

function answer(prompt: FactId | 'copy-4', outcome: Outcome, shown = false): MarkedAnswer {
  return { prompt, outcome, shown };
}

type Sitting = readonly [RuledSat, ...MarkedAnswer[]];

function summed(...sittings: readonly Sitting[]): Summary {
  return sittings.reduce((summary, [ruled, ...places]) => stepSummary(summary, ruled, places), emptySummary);
}

describe('finished sheets', () => {
  test.each([
    ['finished', 1],
    ['bell', 1],
    ['stopped', 0],
    ['torn', 0],
  ] as const)('a sheet that ended by %s counts %i', (ended, count) => {
    expect(summed([ruledSat(monday, { ended })])).toMatchObject({ finished: count, lastSheet: monday });
  });

  test('count one a day, whether or not the second was labelled when it was sat', () => {
    const second = ruledSat(monday, { second: true });
    expect(summed([ruledSat(monday)], [second], [ruledSat(monday)]).finished).toBe(1);
    expect(summed([ruledSat(monday)], [ruledSat(tuesday)]).finished).toBe(2);
  });

  test('a second sheet counts where the first was torn off or voided', () => {
    const second = ruledSat(monday, { second: true });
    expect(summed([ruledSat(monday, { ended: 'torn' })], [second]).finished).toBe(1);
    expect(summed([ruledSat(monday, {}, { voided: true })], [second]).finished).toBe(1);
  });

  test('rows, mending and practice are no sheets', () => {
    const others = (['row', 'mending', 'practice'] as const).map(
      (purpose): Sitting => [ruledSat(monday, { purpose })],
    );
    expect(summed(...others)).toMatchObject({ finished: 0, lastSheet: null });
  });

  test('work that was not the child’s own finishes the day and says nothing of any fact', () => {
    const summary = summed([ruledSat(monday, {}, { notOwnWork: true }), answer('mul-2-3', 'right')]);
    expect(summary).toMatchObject({ finished: 1, lastSheet: monday, facts: new Map(), untimed: [] });
  });

  test('a voided sitting leaves no trace, of whatever purpose', () => {
    for (const purpose of ['sheet', 'row', 'mending', 'practice', 'cards', 'firstTry', 'lines'] as const) {
      const voided = ruledSat(monday, { purpose, shownFirst: [0] }, { voided: true });
      expect(summed([voided, answer('mul-2-3', 'right')])).toEqual(emptySummary);
    }
  });
});

describe('look-back sheets', () => {
  const day = (index: number) => `2026-03-${String(index + 10)}`;
  const sheets = (...kinds: readonly ('sheet' | 'lookBack')[]) =>
    summed(
      ...kinds.map(
        (kind, index): Sitting => [ruledSat(day(index), kind === 'lookBack' ? { lookBack: true } : {})],
      ),
    );

  test('are counted apart from the other sheets, which count from the last of them', () => {
    const summary = sheets('sheet', 'sheet', 'sheet', 'sheet', 'lookBack', 'sheet');
    expect(summary).toMatchObject({ finished: 5, lookBacks: { finished: 1, since: 1 } });
    expect(summary.finishedDays).toEqual([0, 1, 2, 3, 4, 5].map(day));
  });

  test('torn off do not count, nor does a sheet after one on the same day', () => {
    const torn = ruledSat(monday, { lookBack: true, ended: 'torn' });
    expect(summed([torn])).toMatchObject({ lastSheet: monday, lookBacks: { finished: 0 } });
    const second = ruledSat(monday, { second: true });
    expect(summed([ruledSat(monday, { lookBack: true })], [second])).toMatchObject({
      finished: 0,
      lookBacks: { finished: 1, since: 0 },
    });
  });

  test('are answers of the child’s own, without the clock', () => {
    const summary = summed([ruledSat(monday, { lookBack: true }), answer('mul-2-3', 'right')]);
    expect(summary.untimed).toEqual([['mul-2-3', true]]);
    expect(summary.facts.get('mul-2-3')?.rightDays).toBe(1);
  });
});

describe('a card round', () => {
  const cards = (day: string, over: Partial<Sat> = {}) =>
    ruledSat(day, { purpose: 'cards', shownFirst: [0, 3], ...over });
  const places: readonly MarkedAnswer[] = [
    answer('mul-2-3', 'right', true),
    answer('mul-2-5', 'right'),
    answer('mul-2-3', 'right'),
    answer('mul-2-4', 'right', true),
    answer('mul-2-5', 'wrong', true),
  ];
  const round: Sitting = [cards(monday), ...places];

  test('is no sheet, and no evidence of what it had just shown', () => {
    expect(summed(round)).toMatchObject({ finished: 0, lastSheet: null, untimed: [] });
    expect([...summed(round).facts.keys()]).toEqual(['mul-2-5']);
  });

  test('counts the first answer of the day to a fact it had not shown, and no later one', () => {
    expect(summed(round).facts.get('mul-2-5')).toMatchObject({ rightDays: 1, seen: 1, recent: '1' });
    const missed = summed([cards(monday, { shownFirst: [] }), answer('mul-2-5', 'right', true)]);
    expect(missed.facts.get('mul-2-5')).toMatchObject({ rightDays: 0, seen: 1, recent: '0' });
    const asked = summed([ruledSat(monday), answer('mul-2-5', 'wrong')], round);
    expect(asked.facts.get('mul-2-5')).toMatchObject({ rightDays: 0, seen: 1 });
  });

  test('lets a fact taught one day be had the next, though no sheet has asked it', () => {
    const again = summed(round, [cards(tuesday, { shownFirst: [] }), answer('mul-2-3', 'right')]);
    expect(again.facts.get('mul-2-3')).toMatchObject({ rightDays: 1, firstRight: tuesday });
  });

  test('leaves its new facts waiting for a later day, and the known ones not', () => {
    expect(summed(round).rounds).toEqual([
      { day: monday, waiting: ['mul-2-3', 'mul-2-4'], taken: 0, missed: [] },
    ]);
  });

  test('is judged by the first card of a later round, where a miss is what had to be shown', () => {
    const again = cards(tuesday, { shownFirst: [] });
    const kept = summed(round, [again, answer('mul-2-3', 'right'), answer('mul-2-4', 'right', true)]);
    expect(kept.rounds).toEqual([{ day: monday, waiting: [], taken: 1, missed: ['mul-2-4'] }]);
    const skipped = summed(round, [again, answer('mul-2-3', 'skipped'), answer('mul-2-3', 'right')]);
    expect(skipped.rounds[0]).toMatchObject({ waiting: ['mul-2-4'], missed: ['mul-2-3'] });
  });

  test('is not judged by a round that showed its fact anew', () => {
    const anew = cards(tuesday, { shownFirst: [0] });
    const { rounds } = summed(round, [anew, answer('mul-2-3', 'right', true), answer('mul-2-3', 'right')]);
    expect(rounds[0]).toMatchObject({ taken: 0, missed: [] });
  });

  test('makes what it showed no first try later that day; the next day counts', () => {
    const [three, five] = [answer('mul-2-3', 'right'), answer('mul-2-5', 'right')];
    const sheet = summed(round, [ruledSat(monday), three, five]);
    expect(sheet.facts.get('mul-2-3')).toMatchObject({ rightDays: 0, seen: 1, recent: '1' });
    expect(sheet.facts.get('mul-2-5')).toMatchObject({ rightDays: 1, seen: 2 });
    const next = summed(round, [ruledSat(monday), three], [ruledSat(tuesday), three]);
    expect(next.facts.get('mul-2-3')).toMatchObject({ rightDays: 1, firstRight: tuesday });
  });

  test('is judged by the first answer of a later day to each, not by one of its own day', () => {
    const [right, wrong] = [answer('mul-2-3', 'right'), answer('mul-2-3', 'wrong')];
    expect(summed(round, [ruledSat(monday), right]).rounds[0]).toMatchObject({ taken: 0, missed: [] });
    const judged = summed(round, [ruledSat(tuesday), wrong, right], [ruledSat('2026-03-04'), right]);
    expect(judged.rounds).toEqual([{ day: monday, waiting: ['mul-2-4'], taken: 0, missed: ['mul-2-3'] }]);
    const all = summed(round, [ruledSat(tuesday, { clock }), right, answer('mul-2-4', 'skipped')]);
    expect(all.rounds).toEqual([{ day: monday, waiting: [], taken: 1, missed: ['mul-2-4'] }]);
  });

  test('that was broken off taught what it came to', () => {
    const short: Sitting = [
      cards(monday, { ended: 'torn' }),
      answer('mul-2-3', 'right', true),
      answer('mul-2-5', 'unfinished'),
      answer('mul-2-3', 'notReached'),
      answer('mul-2-4', 'notReached'),
    ];
    expect(summed(short).rounds).toMatchObject([{ waiting: ['mul-2-3'] }]);
    expect(summed(short, round).rounds).toMatchObject([{ waiting: ['mul-2-3', 'mul-2-4'] }]);
  });

  test('of which only the newest five days are kept, and none without a new fact', () => {
    const many = Array.from(
      { length: 7 },
      (_, index): Sitting => [cards(`2026-03-0${index + 1}`), ...places],
    );
    expect(summed(...many).rounds.map(({ day }) => day)).toEqual([
      '2026-03-03',
      '2026-03-04',
      '2026-03-05',
      '2026-03-06',
      '2026-03-07',
    ]);
    expect(summed([ruledSat(monday, { purpose: 'cards' }), answer('mul-2-5', 'right')]).rounds).toEqual([]);
  });

  test('that was not the child’s own work says nothing', () => {
    const notOwn = ruledSat(monday, { purpose: 'cards', shownFirst: [0, 3] }, { notOwnWork: true });
    expect(summed([notOwn, ...places])).toEqual(emptySummary);
  });
});

test('a first try is made of the child’s own answers and is no sheet', () => {
  const summary = summed([ruledSat(monday, { purpose: 'firstTry' }), answer('mul-2-3', 'right')]);
  expect(summary).toMatchObject({ finished: 0, lastSheet: null, untimed: [['mul-2-3', true]] });
  expect(summary.facts.get('mul-2-3')).toMatchObject({ rightDays: 1, seen: 1 });
});

test('gap lines and stories leave no trace', () => {
  expect(summed([ruledSat(monday, { purpose: 'lines' }), answer('mul-2-3', 'right')])).toEqual(emptySummary);
});

describe('practice', () => {
  const practised = (over: Partial<Sat>) =>
    summed([ruledSat(monday, { purpose: 'practice', ...over })]).practised;

  test('of each way of taking an answer is done once it was finished', () => {
    expect(practised({ takesItself: true })).toEqual({ done: false, itself: true });
    expect(practised({ takesItself: false })).toEqual({ done: true, itself: false });
    const both = [true, false].map(
      (takesItself): Sitting => [ruledSat(monday, { purpose: 'practice', takesItself })],
    );
    expect(summed(...both).practised).toEqual({ done: true, itself: true });
  });

  test('torn off is still to be done', () => {
    expect(practised({ ended: 'torn' })).toEqual({ done: false, itself: false });
  });

  test('is no evidence of any fact', () => {
    expect(summed([ruledSat(monday, { purpose: 'practice' }), answer('copy-4', 'right')]).facts.size).toBe(0);
  });
});

describe('a fact', () => {
  const seen = (...sittings: readonly Sitting[]) => summed(...sittings).facts.get('mul-2-3');

  test('counts the days on which the day’s first answer was right', () => {
    const right = answer('mul-2-3', 'right');
    expect(seen([ruledSat(monday), right, right], [ruledSat(monday, { purpose: 'row' }), right])).toEqual({
      rightDays: 1,
      firstRight: monday,
      lastRight: [monday],
      seen: 3,
      lastSeen: monday,
      recent: '111',
    });
    expect(seen([ruledSat(monday), right], [ruledSat(tuesday), right])?.rightDays).toBe(2);
  });

  test.each(['wrong', 'skipped'] as const)(
    'whose first answer of the day was %s is not right that day',
    (outcome) => {
      const summary = seen([ruledSat(monday), answer('mul-2-3', outcome), answer('mul-2-3', 'right')]);
      expect(summary).toEqual({
        rightDays: 0,
        firstRight: null,
        lastRight: [],
        seen: 2,
        lastSeen: monday,
        recent: '01',
      });
    },
  );

  test('counts its right days, and keeps the first and the newest four', () => {
    const days = Array.from(
      { length: 6 },
      (_, index): Sitting => [ruledSat(`2026-03-0${index + 1}`), answer('mul-2-3', 'right')],
    );
    expect(seen(...days.slice(0, 3))?.rightDays).toBe(3);
    expect(seen(...days)).toMatchObject({
      rightDays: 6,
      firstRight: '2026-03-01',
      lastRight: ['2026-03-03', '2026-03-04', '2026-03-05', '2026-03-06'],
    });
  });

  test.each(['notReached', 'unfinished'] as const)('that was %s was not seen', (outcome) => {
    expect(seen([ruledSat(monday), answer('mul-2-3', outcome)])).toBeUndefined();
  });

  test('not reached by the bell is first tried in the row after', () => {
    const sheet = ruledSat(monday, { clock, ended: 'bell' });
    const row = ruledSat(monday, { purpose: 'row' });
    expect(seen([sheet, answer('mul-2-3', 'notReached')], [row, answer('mul-2-3', 'right')])?.rightDays).toBe(
      1,
    );
  });

  test('put right in mending, or with the whole fact on the card, is no answer of the child’s own', () => {
    expect(seen([ruledSat(monday, { purpose: 'mending' }), answer('mul-2-3', 'right')])).toBeUndefined();
    expect(seen([ruledSat(monday), answer('mul-2-3', 'right', true)])).toBeUndefined();
  });

  test('keeps its last eight answers', () => {
    const places = Array.from({ length: 12 }, (_, index) => answer('mul-2-3', index < 6 ? 'wrong' : 'right'));
    expect(seen([ruledSat(monday), ...places])).toMatchObject({ seen: 12, recent: '00111111' });
  });
});

describe('answers without the clock', () => {
  test('are those of untimed sheets and of rows', () => {
    const right = answer('mul-2-3', 'right');
    expect(summed([ruledSat(monday, { clock }), right]).untimed).toEqual([]);
    expect(summed([ruledSat(monday), right, answer('mul-2-4', 'skipped')]).untimed).toEqual([
      ['mul-2-3', true],
      ['mul-2-4', false],
    ]);
    expect(summed([ruledSat(monday, { purpose: 'row' }), right]).untimed).toHaveLength(1);
  });

  test('are the newest 250', () => {
    const many = Array.from({ length: 200 }, () => answer('mul-2-3', 'wrong'));
    const more = Array.from({ length: 100 }, () => answer('mul-2-4', 'right'));
    const { untimed } = summed([ruledSat(monday), ...many], [ruledSat(tuesday), ...more]);
    expect(untimed).toHaveLength(250);
    expect(untimed.filter(([fact]) => fact === 'mul-2-4')).toHaveLength(100);
    expect(untimed.at(-1)).toEqual(['mul-2-4', true]);
  });
});

test('a step leaves the summary it was given as it was', () => {
  const before = summed([ruledSat(monday), answer('mul-2-3', 'right')]);
  const copy = structuredClone(before);
  stepSummary(before, ruledSat(tuesday), [answer('mul-2-3', 'wrong'), answer('mul-2-4', 'right')]);
  expect(before).toEqual(copy);
});
