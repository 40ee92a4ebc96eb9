import { describe, expect, it } from 'vitest';
import type { NotEnough } from '../../../src/readings/facts/fact-reading';
import { say, sentenceKinds } from '../../../src/readings/sentences/say';
import type { Counted, Sentence } from '../../../src/readings/sentences/sentence';
import { partBetween, partOf, unbroken } from '../../../src/readings/sentences/wording';
import type { Flustered, Rushed } from '../../../src/readings/sitting-verdict/verdict';

const rushed = (by: Rushed['by']): Rushed => ({
  name: 'rushed',
  by,
  wrong: 5,
  of: 24,
  quickS: 0.8,
  otherS: 1.4,
  p: 0.0003,
  sheets: 8,
  leftS: 9.4,
  slips: 0,
});
const flustered = (by: Flustered['by']): Flustered => ({
  name: 'flustered',
  by,
  ratio: 1.4,
  rightWith: 100,
  ofWith: 120,
  rightWithout: 150,
  ofWithout: 152,
  days: 8,
  facts: 14,
});
const counted: Counted = {
  right: 11,
  of: 12,
  all: 12,
  withoutClock: false,
  accepted: 0,
  slips: 0,
  ofAtEase: 4,
  rightAtEase: 4,
};
const interval = { low: -0.2, high: 1.4 };

/** One of each kind. */
const one: { readonly [K in Sentence['kind']]: Extract<Sentence, { kind: K }> } = {
  byBell: { kind: 'byBell', right: 14, reached: 16, length: 25, accepted: 0, slips: 0 },
  atEase: { kind: 'atEase', right: 24, reached: 25, length: 25, accepted: 0, slips: 0 },
  notCounted: { kind: 'notCounted', why: 'voided' },
  rows: { kind: 'rows', right: 5, of: 5, thinkS: 2.1 },
  notKnown: {
    kind: 'notKnown',
    verdict: { name: 'notKnown', facts: ['mul-7-8', 'mul-6-7'], before: { of: 10, right: 4, quick: 1 } },
  },
  new: { kind: 'new', verdict: { name: 'new', facts: ['mul-7-8', 'mul-6-7'], troubled: 3 } },
  rushedWrongQuicker: {
    kind: 'rushedWrongQuicker',
    verdict: rushed('wrongQuicker'),
    advises: true,
    untimed: 0,
    bellFirst: false,
  },
  rushedThanUsual: { kind: 'rushedThanUsual', verdict: rushed('quickerThanUsual') },
  rushedUnread: { kind: 'rushedUnread', verdict: rushed('unread') },
  flusteredSlower: { kind: 'flusteredSlower', verdict: flustered('slower') },
  flusteredLessRight: { kind: 'flusteredLessRight', verdict: flustered('lessRight') },
  flusteredBoth: { kind: 'flusteredBoth', verdict: flustered('both') },
  slowHands: {
    kind: 'slowHands',
    verdict: { name: 'slowHands', mostAnswers: 18, needed: 15, keyedShare: 0.7, restoringS: 62 },
    advises: true,
  },
  checking: {
    kind: 'checking',
    verdict: { name: 'checking', right: 20, of: 20, thinkS: 3.8, quickBefore: 40, ofBefore: 90 },
  },
  fine: { kind: 'fine', timed: true, band: 'even', slips: 0 },
  tooFew: { kind: 'tooFew', timed: true, wrong: 2 },
  nothingStandsOut: { kind: 'nothingStandsOut' },
  interrupted: { kind: 'interrupted', whole: false },
  noTimes: { kind: 'noTimes' },
  pauses: { kind: 'pauses', times: 6, of: 15 },
  quick: { kind: 'quick', counted, thinkS: 0.9, atMost: false, sureness: 0.97 },
  slow: { kind: 'slow', counted, thinkS: 4.2, sureness: 0.91 },
  uneven: { kind: 'uneven', counted, unevenIn: 'right', sureness: 0.88 },
  toLearn: { kind: 'toLearn', counted: { ...counted, right: 1 }, sureness: 0.95 },
  notEnough: {
    kind: 'notEnough',
    counted: { ...counted, right: 2, of: 2, all: 2 },
    why: 'fewAnswers',
    isKnown: false,
  },
  setFacts: {
    kind: 'setFacts',
    scope: 'plain',
    hurried: false,
    ...{
      facts: 17,
      quick: 9,
      slow: 3,
      uneven: 1,
      toLearn: 2,
      unevenWithClock: 0,
      soFar: 0,
      fewAnswers: 1,
      oneDay: 0,
    },
  },
  errorLift: { kind: 'errorLift', what: 'off by one', hits: 14, of: 17, expected: 0.3, pMore: 0.0001 },
  ready: {
    kind: 'ready',
    ...{ quick: 16, facts: 17, lastRight: 48, lastOf: 50, unevenWithClock: 0 },
    lastDays: ['2026-01-05', '2026-02-11'],
    clock: 'lessRight',
  },
  notReady: { kind: 'notReady', quick: 9, facts: 17, heldBack: ['mul-7-8'], isAccurate: true },
  timeIt: { kind: 'timeIt', lastRight: 46, lastOf: 50 },
  timedTooSoon: { kind: 'timedTooSoon', lastRight: 20, lastOf: 30 },
  clockTimes: {
    kind: 'clockTimes',
    claim: 'slower',
    ratio: 1.31,
    interval: { low: 1.2, high: 1.4 },
    facts: 20,
    days: 9,
    rights: 'worse',
  },
  clockAccuracy: { kind: 'clockAccuracy', claim: 'worse', worse: 9, better: 1, facts: 20, time: null },
  clockNoClaim: {
    kind: 'clockNoClaim',
    time: 'tooFewDays',
    accuracy: 'tooFewFacts',
    facts: 7,
    daysWith: 3,
    daysWithout: 3,
  },
  trialDone: { kind: 'trialDone', ratio: 1.2, p: 0.032, days: 8, facts: 14, orders: 62 },
  trialOpen: { kind: 'trialOpen', days: 3, left: 5, isStopped: false },
  trend: { kind: 'trend', of: 'facts', withClock: true, perWeek: 0.6, interval, sheets: 12, isFirst: true },
  noTrend: { kind: 'noTrend', of: 'digits', withClock: false, why: 'tooFew', sheets: 3, isFirst: false },
  keypad: { kind: 'keypad', mostAnswers: 18, allowanceS: 45, bands: 1, restoringS: 52 },
  noHandTime: { kind: 'noHandTime' },
};
const all = Object.values(one) as readonly Sentence[];
const said = all.map((sentence) => ({ kind: sentence.kind, ...say(sentence, 'Juniper') }));

describe('the sentences', () => {
  it('are of forty kinds at most', () => {
    expect(Object.keys(sentenceKinds).length).toBeLessThanOrEqual(40);
    expect(all.map(({ kind }) => kind).sort()).toEqual(Object.keys(sentenceKinds).sort());
  });

  it('say how they are known in two lines, each a sentence', () => {
    for (const { kind, text, how } of said) {
      expect(how.length, kind).toBe(2);
      for (const line of [text, ...how]) {
        expect(line, kind).toMatch(/^[A-Z0-9“].*[.!]$/s);
        expect(line, kind).not.toMatch(/undefined|NaN|null|\$\{| {2}|\d\.\d{4}/);
      }
    }
  });

  it('follow the pattern of the design', () => {
    const pattern = [one.byBell, one.rows, one.tooFew]
      .map((sentence) => say(sentence, 'Juniper').text)
      .join(' ');
    expect(pattern).toBe(
      '14 right by the bell; Juniper reached 16. The five answers of the extra row, without the clock, were all right, about 2\u00a0s each. ' +
        'Two wrong answers are too few to say why; the next sheets may tell.',
    );
  });

  it('keep a number with its unit, and a fact in one piece', () => {
    for (const { kind, text, how } of said) {
      for (const line of [text, ...how])
        expect(line, kind).not.toMatch(/\d (s\b|in 100)|\d [+−×÷]|[+−×÷] \d/);
    }
    const { text } = say(
      { kind: 'notReady', quick: 1, facts: 2, heldBack: ['add-6-3'], isAccurate: true },
      'Wren',
    );
    expect(text).toContain('6\u00a0+\u00a03');
    expect(unbroken('14 sheets of 6 + 3 = 9 in 45 s, 3 s each')).toBe(
      '14 sheets of 6\u00a0+\u00a03 = 9 in 45\u00a0s, 3\u00a0s each',
    );
  });

  it('have curly apostrophes alone', () => {
    for (const { kind, text, how } of said) expect([text, ...how].join(' '), kind).not.toMatch(/['"]/);
  });

  it('speak of a difference made by the clock only where the days were drawn', () => {
    const makes = said.filter(({ text }) => /makes a difference/.test(text));
    expect(makes.map(({ kind }) => kind)).toEqual(['trialDone']);
    for (const { kind, text } of said) {
      if (/flustered|clockTimes|clockAccuracy/.test(kind))
        expect(text, kind).toMatch(/[Oo]n days with the clock/);
    }
    expect(say({ ...one.trialDone, p: 0.4 }, 'Juniper').text).not.toContain('makes a difference');
  });

  it('name the child and no gender, and diagnose nothing', () => {
    const words = said.flatMap(({ text, how }) => [text, ...how]).join(' ');
    expect(words).not.toMatch(/\b(he|she|him|her|his|hers|boy|girl)\b/i);
    expect(words).not.toMatch(
      /anxi(?:ety|ous child)|disorder|disab|dyscalcul|deficit|symptom|diagnos|lazy|bad at|careless/i,
    );
    expect(words).not.toMatch(
      /\b(?:p-value|significan|statistic|variance|posterior|prior|confidence|hypothes)/i,
    );
  });

  it('join sooner and less often right into hurry, and claim it nowhere else', () => {
    const { clockAccuracy } = one;
    expect(say({ ...clockAccuracy, time: 'faster' }, 'Juniper').text).toContain('look like hurry');
    expect(say({ ...clockAccuracy, claim: 'better', time: 'faster' }, 'Juniper').text).not.toContain('hurry');
    expect(say(clockAccuracy, 'Juniper').text).not.toContain('hurry');
  });

  it('say apart what a fact lacks: answers, days, times, one wrong answer, or agreement', () => {
    const text = (why: NotEnough, right = 5, isKnown = false) =>
      say({ kind: 'notEnough', counted: { ...counted, right, of: 5, all: 5 }, why, isKnown }, 'Juniper').text;
    expect(text('fewAnswers')).toBe('Too few answers yet: 5 of 5 right.');
    expect(text('oneDay')).toBe('Too few days yet: 5 of 5 right, all on one day.');
    expect(text('noTimes')).toMatch(/^Comes right: 5 of 5 right\. Without times/);
    expect(text('notSure')).toBe('Right so far: 5 of 5 right, not yet enough to be sure.');
    expect(text('notSure', 5, true)).toBe('Right every time, 5 of 5; not yet clear whether quick or slow.');
    expect(text('notSure', 4)).toBe('Can’t tell yet: 4 of 5 right, between known and uneven.');
    expect(text('notSure', 2)).toBe('Can’t tell yet: 2 of 5 right, between uneven and to learn.');
  });

  it('say of a fact which answers decided, which the parent ruled right, and which are left out as slips', () => {
    const how = (over: Partial<Counted>) =>
      say({ ...one.quick, counted: { ...counted, ...over } }, 'Juniper').how[0];
    expect(how({})).toBe('This rests on all 12 answers of the child’s own.');
    expect(how({ all: 15, accepted: 1, slips: 2 })).toBe(
      'This rests on the newest 12 answers of 15. One of them is right by your ruling. The two you called slips are left out here; on their sheets they stay wrong.',
    );
    expect(how({ all: 20, withoutClock: true, slips: 1 })).toBe(
      'This rests on 12 answers without the clock; seven more, with the clock or long ago, are left out. The one you called a slip is left out here; on its sheet it stays wrong.',
    );
  });

  it('never say of a fact right each time that it sometimes does not come', () => {
    const { text } = say({ ...one.uneven, counted: { ...counted, right: 12 }, unevenIn: 'pace' }, 'Juniper');
    expect(text).toBe('Uneven: 12 of 12 right, at one time quickly and at another slowly.');
  });

  it('add up: the states told of a set are all its facts', () => {
    const { text } = say({ ...one.setFacts, soFar: 4, facts: 24, oneDay: 1 }, 'Juniper');
    const counts = [...text.matchAll(/\d+/g)].map(([number]) => Number(number));
    expect(counts.slice(1).reduce((sum, number) => sum + number, 0)).toBe(counts[0]);
  });

  it('tell a rise that may be chance as none, since no line is drawn for it', () => {
    expect(say(one.trend, 'Juniper').text).toBe(
      'Facts right a minute on days with the clock: neither clearly rising nor falling.',
    );
    expect(say({ ...one.trend, interval: { low: 0.2, high: 1.4 } }, 'Juniper').text).toBe(
      'Facts right a minute on days with the clock: rising, by about 0.6 a week.',
    );
  });

  it('say of too few sheets how many there are, and whose a line on the chart is', () => {
    const { text, how } = say(one.noTrend, 'Juniper');
    expect(text).toMatch(/three sheets since something changed, too few/);
    expect(how[0]).toContain('belongs to the sheets before the change');
    expect(say({ ...one.noTrend, isFirst: true }, 'Juniper').how[0]).not.toContain('belongs');
  });

  it('never praise an answer begun sooner for that alone', () => {
    const sooner = {
      ...one.clockTimes,
      claim: 'faster',
      ratio: 0.79,
      interval: { low: 0.72, high: 0.86 },
    } as const;
    const text = (rights: 'worse' | 'better' | null) => say({ ...sooner, rights }, 'Teo').text;
    expect(text('worse')).toMatch(
      /begins an answer about a fifth sooner \(14 to 28.in 100\), which alone is no gain/,
    );
    expect(text('better')).toMatch(/and is right more often as well/);
    expect(text(null)).toMatch(/no more and no less often, as far as can be told/);
  });

  it('lay what several rushed sheets show on none of them alone', () => {
    const [, together] = say(one.rushedWrongQuicker, 'Teo').how;
    expect(together).toMatch(
      /^One such sheet alone proves nothing\. .*the seven like it before, taken together/,
    );
    const alone = { ...one.rushedWrongQuicker.verdict, sheets: 1, p: 0.004 };
    expect(say({ ...one.rushedWrongQuicker, verdict: alone }, 'Teo').how[1]).toMatch(
      /less than once in 100 times\.$/,
    );
  });

  it('say how much time a rushed child had left', () => {
    for (const kind of ['rushedWrongQuicker', 'rushedThanUsual', 'rushedUnread'] as const)
      expect(say(one[kind], 'Teo').text, kind).toMatch(/9.s were left at the end/);
  });

  it('say what the parent’s rulings did to a count', () => {
    const [counted = ''] = say({ ...one.byBell, accepted: 1, slips: 2 }, 'Teo').how;
    expect(counted).toContain('One of them is right by your ruling.');
    expect(counted).toContain('Two wrong answers you called slips; in this count they stay wrong.');
    expect(say({ ...one.fine, timed: false, slips: 1 }, 'Teo').how[0]).toContain(
      'Nine in ten is reckoned without the one you called a slip.',
    );
    const verdict = { ...one.rushedUnread.verdict, slips: 2 };
    expect(say({ ...one.rushedUnread, verdict }, 'Teo').how[0]).toContain(
      'The two you called slips are left out here; on their sheets they stay wrong.',
    );
  });

  it('tell answers with the clock from those without it where both made a fact uneven', () => {
    const text = (over: Partial<Counted>) =>
      say({ ...one.uneven, counted: { ...counted, right: 10, of: 17, ...over } }, 'Teo').text;
    expect(text({ ofAtEase: 6, rightAtEase: 6 })).toBe(
      'Right without the clock, 6 of 6; uneven with it, 4 of 11 right.',
    );
    expect(text({ ofAtEase: 6, rightAtEase: 5 })).toBe(
      'Uneven: 10 of 17 right, 5 of 6 without the clock, 5 of 11 with it.',
    );
    expect(text({ ofAtEase: 2, rightAtEase: 2 })).toMatch(/^Uneven: 10 of 17 right, 2 of 2 without/);
    expect(text({ ofAtEase: 0, rightAtEase: 0 })).toMatch(/sometimes it comes/);
  });

  it('say of moving on which fifty answers speak for it, and why facts called uneven do not speak against it', () => {
    const { text, how } = say({ ...one.ready, unevenWithClock: 11 }, 'Teo');
    expect(text).toBe(
      'Teo looks ready to move on: of the last 50 answers to this set without the clock, from 5\u00a0Jan to 11\u00a0Feb, 48 were right. ' +
        'Start the next set: that turns the clock off too. On days with it Teo has been less often right.',
    );
    expect(how[0]).toContain('11 facts are called uneven with answers with the clock counted in');
    expect(say(one.ready, 'Teo').how[0]).not.toContain('uneven');
  });

  it('name a change as a part of the whole where it is near one, else in a hundred', () => {
    const parts = [0.79, 1.32, 1.24, 1.5, 1.04, 0.97, 2.4];
    expect(parts.map(partOf)).toEqual([
      'about a fifth',
      'about a third',
      'about a quarter',
      'about half',
      '4 in 100',
      '3 in 100',
      '140 in 100',
    ]);
    expect(partBetween({ low: 0.9, high: 1.2 })).toBe('');
  });

  it('place every answer given among those a rushed sheet is read by', () => {
    const [from] = say({ ...one.rushedWrongQuicker, untimed: 1 }, 'Teo').how;
    expect(from).toMatch(/^From 24 answers given on this sheet\. One more has no time that can be used\./);
    const [bell] = say({ ...one.rushedWrongQuicker, bellFirst: true }, 'Teo').how;
    expect(bell).toMatch(/not the whole sheet: the bell came first\.$/);
  });

  it('call 3 s a custom wherever quick or slow is said', () => {
    for (const kind of ['quick', 'slow', 'notKnown'] as const) {
      expect(say(one[kind], 'Juniper').how.join(' ')).toMatch(/custom of the classroom/);
    }
  });

  it('tell of extra rows without weighing them', () => {
    expect(say(one.rows, 'Juniper').how.join(' ')).toContain('never weighed');
  });
});
