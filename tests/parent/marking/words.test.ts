import { expect, test } from 'vitest';
import { copyNumbers } from '../../../src/core/hand-round/hand-round';
import type { Marked, MarkedPlace } from '../../../src/core/marking/marked';
import type { Purpose, Sat } from '../../../src/core/record/sat';
import {
  flagSentences,
  outcomeText,
  promptText,
  rateSentence,
  rulingText,
  sittingName,
  waySentence,
} from '../../../src/parent/marking/words';
import { teosSheet, wrensSheet } from '../made-household';

const place: MarkedPlace = {
  place: 3,
  prompt: 'mul-7-8',
  answer: 56,
  given: '54',
  outcome: 'wrong',
  byBell: true,
  firstKeyMs: 900,
  tookMs: 1500,
  atMs: 5000,
  shown: false,
  accepted: false,
  slip: null,
};

test('every outcome has words of its own, with the answer where it was missed', () => {
  expect(outcomeText(place, true)).toBe('wrong; the answer is 56');
  expect(outcomeText({ ...place, slip: true }, true)).toBe('wrong: a slip; the answer is 56');
  expect(outcomeText({ ...place, slip: false }, true)).toBe('wrong: a miscalculation; the answer is 56');
  expect(outcomeText({ ...place, outcome: 'right', given: '56' }, true)).toBe('right');
  expect(outcomeText({ ...place, outcome: 'right', accepted: true }, true)).toBe('right by your ruling');
  expect(outcomeText({ ...place, outcome: 'skipped', given: null }, true)).toBe('skipped');
  expect(outcomeText({ ...place, outcome: 'notReached', given: null }, true)).toBe('not reached');
  expect(outcomeText({ ...place, outcome: 'unfinished', given: null }, true)).toBe(
    'unfinished when it ended',
  );
});

test('an answer after the bell is told as such, but only where there was a bell', () => {
  const late = { ...place, outcome: 'right', given: '56', byBell: false } as const;
  expect(outcomeText(late, true)).toBe('right, after the bell');
  expect(outcomeText(late, false)).toBe('right');
});

test('a prompt is written with its sign; a number to copy says so', () => {
  expect(promptText('div-56-7')).toBe('56 ÷ 7');
  expect(promptText('sub-13-5')).toBe('13 − 5');
  expect(promptText('copy-47')).toBe('copy 47');
});

test('the way of a sitting is one sentence', () => {
  expect(waySentence(teosSheet() as Sat)).toBe(
    '25 facts, 45\u00a0s on the clock, seen as a thread drawn out along the screen; ended by the bell.',
  );
  expect(waySentence(wrensSheet() as Sat)).toBe('Ten facts, without a clock; finished.');
});

test('rates are told as far as the times allow', () => {
  const rates = { factsPerMin: 18.66, digitsPerMin: 25.333, medianMs: 1540 } as Marked;
  expect(rateSentence(rates)).toBe(
    '18.7 facts right a minute, 25.3 digits right a minute, half of the answers were complete within 1.5\u00a0s.',
  );
  expect(rateSentence({ factsPerMin: null, digitsPerMin: null, medianMs: null } as Marked)).toBe('');
});

test('silence and mashing are things to read; without times there is nothing to say', () => {
  const flags = (longSilence: boolean, mashing: boolean) =>
    flagSentences({ flags: { longSilence, mashing } } as Marked).length;
  expect([flags(false, false), flags(true, false), flags(false, true), flags(true, true)]).toEqual([
    0, 1, 1, 2,
  ]);
  expect(flagSentences({ flags: null } as Marked)).toEqual([]);
});

test('each ruling is a line that names its fact, child or number of rows', () => {
  const text = (ruling: Parameters<typeof rulingText>[0]) => rulingText(ruling, ['mul-7-8'], () => 'Wren');
  expect(text({ what: 'accept', place: 0 })).toBe('No. 1, 7 × 8: counts as right.');
  expect(text({ what: 'slip', place: 0, slip: false })).toBe('No. 1, 7 × 8: a miscalculation.');
  expect(text({ what: 'accept', place: 7 })).toBe('No. 8: counts as right.');
  expect(text({ what: 'wrongChild', child: 'wren' })).toBe('It was Wren who sat it.');
  expect(text({ what: 'rows', rows: 0 })).toBe('No extra rows.');
  expect(text({ what: 'rows', rows: 2 })).toBe('Two extra rows sent.');
});

test('every kind of sitting is named in plain words, by its plan where the purpose does not tell', () => {
  const named = (purpose: Purpose, more: Partial<Sat> = {}) => sittingName({ purpose, prompts: [], ...more });
  expect(named('sheet')).toBe('Sheet');
  expect(named('sheet', { lookBack: true })).toBe('Look-back');
  expect(named('sheet', { paper: true })).toBe('Sheet on paper');
  expect(named('row', { paper: true })).toBe('Extra row on paper');
  expect(named('mending')).toBe('Corrections');
  expect(named('mending', { twinOf: ['mul-7-8'] })).toBe('Similar facts');
  expect(named('practice')).toBe('Practice of the keys');
  expect(named('practice', { prompts: copyNumbers(1) })).toBe('Copying numbers');
  expect([named('cards'), named('firstTry'), named('lines')]).toEqual([
    'Card round',
    'First try',
    'Gap lines and stories',
  ]);
});
