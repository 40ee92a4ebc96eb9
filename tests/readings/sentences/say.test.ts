import { describe, expect, it } from 'vitest';
import { say, sentenceKinds } from '../../../src/readings/sentences/say';
import type { Sentence } from '../../../src/readings/sentences/sentence';
import { unbroken } from '../../../src/readings/sentences/wording';
import type { Flustered, Rushed } from '../../../src/readings/sitting-verdict/verdict';

const rushed = (by: Rushed['by']): Rushed => ({
  name: 'rushed',
  by,
  wrong: 5,
  of: 24,
  quickS: 0.8,
  otherS: 1.4,
  p: 0.003,
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
const interval = { low: -0.2, high: 1.4 };

/** One of each kind. */
const one: { readonly [K in Sentence['kind']]: Extract<Sentence, { kind: K }> } = {
  byBell: { kind: 'byBell', right: 14, reached: 16, length: 25 },
  atEase: { kind: 'atEase', right: 24, reached: 25, length: 25 },
  notCounted: { kind: 'notCounted', why: 'voided' },
  rows: { kind: 'rows', right: 5, of: 5, thinkS: 2.1 },
  notKnown: {
    kind: 'notKnown',
    verdict: { name: 'notKnown', facts: ['mul-7-8', 'mul-6-7'], before: { of: 10, right: 4, quick: 1 } },
  },
  new: { kind: 'new', verdict: { name: 'new', facts: ['mul-7-8', 'mul-6-7'], troubled: 3 } },
  rushedWrongQuicker: { kind: 'rushedWrongQuicker', verdict: rushed('wrongQuicker') },
  rushedThanUsual: { kind: 'rushedThanUsual', verdict: rushed('quickerThanUsual') },
  rushedUnread: { kind: 'rushedUnread', verdict: rushed('unread') },
  flusteredSlower: { kind: 'flusteredSlower', verdict: flustered('slower') },
  flusteredLessRight: { kind: 'flusteredLessRight', verdict: flustered('lessRight') },
  flusteredBoth: { kind: 'flusteredBoth', verdict: flustered('both') },
  slowHands: {
    kind: 'slowHands',
    verdict: { name: 'slowHands', mostAnswers: 18, needed: 15, keyedShare: 0.7, restoringS: 62 },
  },
  checking: {
    kind: 'checking',
    verdict: { name: 'checking', right: 20, of: 20, thinkS: 3.8, quickBefore: 40, ofBefore: 90 },
  },
  fine: { kind: 'fine', timed: true },
  tooFew: { kind: 'tooFew', timed: true },
  nothingStandsOut: { kind: 'nothingStandsOut' },
  interrupted: { kind: 'interrupted' },
  noTimes: { kind: 'noTimes' },
  pauses: { kind: 'pauses', times: 6 },
  quick: { kind: 'quick', right: 12, of: 12, thinkS: 0.9, atMost: false, sureness: 0.97 },
  slow: { kind: 'slow', right: 11, of: 12, thinkS: 4.2, sureness: 0.91 },
  uneven: { kind: 'uneven', right: 6, of: 11, sureness: 0.88 },
  toLearn: { kind: 'toLearn', right: 1, of: 6, sureness: 0.95 },
  notEnough: { kind: 'notEnough', answers: 2, right: 2, why: 'fewAnswers' },
  setFacts: { kind: 'setFacts', facts: 17, quick: 9, slow: 3, uneven: 1, toLearn: 2, tooFew: 1 },
  errorLift: { kind: 'errorLift', what: 'off by one', hits: 14, of: 17, expected: 0.3, pMore: 0.0001 },
  ready: { kind: 'ready', quick: 16, facts: 17, lastRight: 48, lastOf: 50 },
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
  },
  clockAccuracy: { kind: 'clockAccuracy', claim: 'worse', worse: 9, better: 1, facts: 20, isSooner: false },
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
  trend: { kind: 'trend', of: 'facts', withClock: true, perWeek: 0.6, interval, sittings: 12 },
  noTrend: { kind: 'noTrend', of: 'digits', withClock: false, why: 'tooFew' },
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
      '14 right by the bell; Juniper reached 16. Five more without the clock were all right, about 2\u00a0s each. ' +
        'Too few to say why; tomorrow’s sheet will tell more.',
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
    expect(say({ ...clockAccuracy, isSooner: true }, 'Juniper').text).toContain('look like hurry');
    expect(say({ ...clockAccuracy, claim: 'better', isSooner: true }, 'Juniper').text).not.toContain('hurry');
    expect(say(clockAccuracy, 'Juniper').text).not.toContain('hurry');
  });

  it('say one name for too few answers and another for answers that don’t agree', () => {
    const text = (why: 'fewAnswers' | 'oneDay' | 'notSure') => say({ ...one.notEnough, why }, 'Juniper').text;
    expect(text('fewAnswers')).toMatch(/^Too few answers yet/);
    expect(text('oneDay')).toMatch(/^Too few answers yet/);
    expect(text('notSure')).toMatch(/^Can’t tell yet/);
  });

  it('tell a rise that may be chance as a rise', () => {
    expect(say(one.trend, 'Juniper').text).toMatch(/rises by about 0.6 a week, but that may be chance/);
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
