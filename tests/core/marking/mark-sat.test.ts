import { describe, expect, test } from 'vitest';
import type { SatRulings } from '../../../src/core/marking/sat-rulings';
import { clock45, planOf, Sitter, timed } from '../sitting/sitter';
import { type Deed, facts, marked, sit } from './made-sat';

const times = (count: number, deed: Deed): readonly Deed[] => Array.from({ length: count }, () => deed);
const timedPlan = { clock: clock45 } as const;

describe('outcomes', () => {
  test('right, wrong, skipped, unfinished and not reached are told apart', () => {
    const sitter = new Sitter(timed(['add-6-2', 'mul-7-8', 'sub-9-4', 'add-2-2', 'add-1-1']));
    sitter.answer('8', 1000, 2000).answer('54', 2017, 3000).shown(3117).key('skip', 4000);
    const result = marked(sitter.shown(4017).time(46_001).left(46_500).sat());
    expect(result.places.map(({ outcome }) => outcome)).toEqual([
      'right',
      'wrong',
      'skipped',
      'unfinished',
      'notReached',
    ]);
    expect(result).toMatchObject({
      right: 1,
      wrong: 1,
      skipped: 1,
      unfinished: 1,
      notReached: 1,
      reached: 4,
    });
  });

  test('numbers are compared, not digits: 08 is 8', () => {
    const result = marked(new Sitter(planOf(['add-6-2'])).answer('08', 1000, 2000, 'done').sat());
    expect(result.places[0]).toMatchObject({ outcome: 'right', given: '08', answer: 8 });
  });

  test('only the last visit that decided a place counts', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2'])).answer('9', 1000, 2000).shown(2017);
    sitter.key('back', 3000).answer('8', 3017, 4000).answer('4', 4017, 5000);
    expect(marked(sitter.sat())).toMatchObject({ right: 2, wrong: 0, rightByBell: 2 });
  });

  test('a skipped fact answered when it came back is right', () => {
    const sitter = new Sitter(planOf(['add-6-2', 'add-2-2'])).shown(1000).key('skip', 2000);
    sitter.answer('4', 2017, 3000, 'done').answer('8', 3117, 4000, 'done');
    expect(marked(sitter.sat())).toMatchObject({ right: 2, skipped: 0 });
  });

  test('an answer stands though its card was opened again and left open', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2'])).answer('8', 1000, 2000).shown(2017);
    const result = marked(sitter.key('back', 3000).shown(3017).stopped(4000).sat());
    expect(result.places.map(({ outcome }) => outcome)).toEqual(['right', 'unfinished']);
  });

  test('a fact answered right only after it was shown says so', () => {
    const sitter = new Sitter(planOf(['add-6-2', 'add-2-2'], { purpose: 'mending', onWrong: 'showAgain' }));
    sitter.answer('9', 1000, 2000, 'done').answer('8', 2200, 3000, 'done').answer('4', 3200, 4000, 'done');
    const { places } = marked(sitter.sat());
    expect(places.map(({ outcome, shown }) => [outcome, shown])).toEqual([
      ['right', true],
      ['right', false],
    ]);
  });
});

describe('rulings', () => {
  const sat = sit(facts(5), ['right', 'wrong', 'skip', 'right', 'wrong']);

  test('an accepted answer is right, and only a wrong answer can be accepted', () => {
    const result = marked(sat, { accepted: new Set([0, 1, 2]) });
    expect(result.places.map(({ outcome, accepted }) => [outcome, accepted])).toEqual([
      ['right', false],
      ['right', true],
      ['skipped', false],
      ['right', false],
      ['wrong', false],
    ]);
    expect(result).toMatchObject({ right: 3, wrong: 1 });
  });

  test('the parent’s word on a slip is passed on', () => {
    const { places } = marked(sat, {
      slips: new Map([
        [1, true],
        [4, false],
      ]),
    });
    expect(places.map(({ slip }) => slip)).toEqual([null, true, null, null, false]);
  });
});

describe('the band', () => {
  const firm = () => sit(facts(25), times(25, 'right'), timedPlan);

  test.each([
    [25, 'firm'],
    [20, 'firm'],
    [19, 'even'],
    [15, 'even'],
    [14, 'loose'],
    [10, 'loose'],
    [9, 'thin'],
    [0, 'thin'],
  ] as const)('%d right by the bell of 25 is %s', (right, band) => {
    const sat = sit(facts(25), [...times(right, 'right'), ...times(25 - right, 'wrong')], timedPlan);
    expect(marked(sat)).toMatchObject({ rightByBell: right, band, noBand: null });
  });

  test('counts what was right by the bell, not what was right', () => {
    const sat = sit(facts(25), times(15, 'right'), timedPlan, 3000);
    expect(marked(sat)).toMatchObject({ right: 15, rightByBell: 15, band: 'even' });
    const slower = marked(sit(facts(25), times(15, 'right'), timedPlan, 3001));
    expect(slower).toMatchObject({ right: 15, rightByBell: 14, band: 'loose' });
  });

  const none: readonly (readonly [string, Partial<SatRulings>])[] = [
    ['voided', { voided: true }],
    ['notOwnWork', { notOwnWork: true }],
  ];
  test.each(none)('there is none where the sitting is %s, band anyway or not', (noBand, ruling) => {
    expect(marked(firm(), ruling)).toMatchObject({ band: null, noBand });
    expect(marked(firm(), { ...ruling, bandAnyway: true })).toMatchObject({ band: null, noBand });
  });

  test('there is none untimed, nor a count by the bell', () => {
    const result = marked(sit(facts(5), times(5, 'right')));
    expect(result).toMatchObject({ band: null, noBand: 'untimed', rightByBell: 0 });
    expect(result.places.every(({ byBell }) => !byBell)).toBe(true);
  });

  test('there is none on a second sheet of a day', () => {
    const sat = sit(facts(25), times(25, 'right'), { ...timedPlan, second: true });
    expect(marked(sat)).toMatchObject({ band: null, noBand: 'second' });
    expect(marked(sat, { bandAnyway: true })).toMatchObject({ band: null, noBand: 'second' });
  });

  test('there is none where it was interrupted, unless the parent rules so', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2', 'add-1-1'])).answer('8', 1000, 2000);
    sitter.shown(2017).left(3000).returned(60_000).answer('4', 60_017, 61_000).answer('2', 61_017, 200_000);
    expect(marked(sitter.sat())).toMatchObject({ band: null, noBand: 'interrupted', interrupted: true });
    // Of three, a limit of 20 in 25 is 3, of 15 is 2: the third answer fell after 45 s of active time.
    expect(marked(sitter.sat(), { bandAnyway: true })).toMatchObject({
      band: 'even',
      rightByBell: 2,
      right: 3,
    });
  });

  test.each(['stopped', 'torn'] as const)('a sitting %s counts as interrupted', (ended) => {
    expect(marked({ ...firm(), ended })).toMatchObject({ noBand: 'interrupted' });
  });

  test('accepted answers count for it', () => {
    const sat = sit(facts(25), [...times(19, 'right'), ...times(6, 'wrong')], timedPlan);
    expect(marked(sat)).toMatchObject({ band: 'even' });
    expect(marked(sat, { accepted: new Set([19]) })).toMatchObject({ band: 'firm', rightByBell: 20 });
  });
});

describe('times', () => {
  test('first key and answer are measured from the onset of the visit that decided', () => {
    const sat = new Sitter(planOf(['mul-7-8']))
      .shown(1000.25)
      .key('back', 1500)
      .type('56', 2000, 'done')
      .sat();
    expect(marked(sat).places[0]).toMatchObject({ firstKeyMs: 999.75, tookMs: 1199.75, atMs: 1199.75 });
  });

  test('a card opened again has no thinking time and stays out of the median', () => {
    const sitter = new Sitter(timed(['add-6-2', 'add-2-2', 'add-1-1'])).answer('9', 1000, 2000);
    sitter.shown(2000).key('back', 3000).answer('8', 3000, 3400);
    const result = marked(sitter.answer('4', 3400, 6400).answer('2', 6400, 7900).sat());
    expect(result.places.map(({ firstKeyMs }) => firstKeyMs)).toEqual([null, 3000, 1500]);
    expect(result.places[0]).toMatchObject({ tookMs: 400 });
    expect(result.medianMs).toBe(2250);
  });

  test('active time leaves out what was void and away', () => {
    const sitter = new Sitter(planOf(['add-6-2', 'add-2-2'])).answer('8', 1000, 1900, 'done').shown(2000);
    sitter.left(5000).returned(90_000).answer('4', 90_500, 91_400, 'done');
    expect(marked(sitter.sat()).places.map(({ atMs }) => atMs)).toEqual([1000, 2000]);
  });

  test('without times there are no times, rates or flags, but there is a band', () => {
    const sat = sit(facts(25), times(25, 'right'), { ...timedPlan, keepTimes: false });
    const result = marked(sat);
    expect(result).toMatchObject({ medianMs: null, factsPerMin: null, digitsPerMin: null, flags: null });
    expect(result).toMatchObject({ band: 'firm', rightByBell: 25 });
    for (const { tookMs, firstKeyMs, atMs } of result.places)
      expect([tookMs, firstKeyMs, atMs]).toEqual([null, null, null]);
  });
});

describe('rates', () => {
  test('a timed sheet ended by the bell is rated over its allowance', () => {
    const sitter = new Sitter(timed(facts(25)));
    for (let n = 0; n < 10; n += 1) sitter.answer('99', 1000 + n * 2000, 2000 + n * 2000);
    sitter
      .answer(String(5 * 8), 21_000, 22_000)
      .shown(22_200)
      .time(46_001)
      .left(46_100);
    const result = marked(sitter.sat());
    expect(result.rightByBell).toBe(1);
    expect(result.factsPerMin).toBeCloseTo(60 / 45, 12);
  });

  test('a timed sheet done sooner is rated over the time it took', () => {
    const result = marked(sit(facts(25), times(25, 'right'), timedPlan));
    expect(result.factsPerMin).toBeCloseTo(60, 12);
    expect(result.digitsPerMin).toBeCloseTo(120, 12);
  });

  test('an untimed sheet is rated over its whole length', () => {
    const result = marked(sit(facts(10), [...times(5, 'right'), ...times(5, 'skip')], {}, 2000));
    expect(result.factsPerMin).toBeCloseTo((5 * 60) / 20, 12);
  });

  test('an answer after the bell adds nothing to a rate', () => {
    const sitter = new Sitter(timed(['mul-7-8', 'mul-7-9'])).answer('56', 1000, 2000);
    const result = marked(sitter.shown(2100).time(46_001).type('63', 47_000).sat());
    expect(result.digitsPerMin).toBeCloseTo((2 * 60) / 45, 12);
  });

  test('an interrupted timed sheet is rated over its allowance at most', () => {
    const sitter = new Sitter(timed(['mul-7-8', 'mul-7-9', 'mul-8-9'])).answer('56', 1000, 2000);
    sitter.shown(2100).left(3000).returned(9000).answer('63', 9000, 10_000).answer('72', 10_100, 100_000);
    expect(marked(sitter.sat())).toMatchObject({ rightByBell: 2, factsPerMin: (2 * 60) / 45 });
  });

  test('an accepted answer has all the digits of the true one', () => {
    const sat = sit(facts(2), ['wrong', 'right'], {}, 30_000);
    expect(marked(sat).digitsPerMin).toBe(2);
    expect(marked(sat, { accepted: new Set([0]) }).digitsPerMin).toBe(4);
  });

  test('a sheet nobody touched has none', () => {
    const result = marked(new Sitter(planOf(['mul-7-8'])).stopped(10).sat());
    expect(result).toMatchObject({ factsPerMin: null, digitsPerMin: null, medianMs: null, notReached: 1 });
  });
});
