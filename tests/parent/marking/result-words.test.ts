import { expect, test } from 'vitest';
import { markSat } from '../../../src/core/marking/mark-sat';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat } from '../../../src/core/record/sat';
import { defaultChildSettings, defaultHouseholdSettings } from '../../../src/core/record/settings';
import {
  bandSentence,
  leftSentence,
  resultSentence,
  wouldBeSentence,
} from '../../../src/parent/marking/result-words';
import { promptsOf, teosSheet, wrensSheet } from '../made-household';
import { allRight, madeSat } from '../made-sat';

const names = defaultHouseholdSettings.bandNames;
const { limits } = defaultChildSettings;
const stamped = (draft: object) => ({ id: 's', v: 1, seq: 1, device: 'd', at: 0, ...draft }) as Sat;
const mark = (sat: Sat, rulings = noRulings) => markSat(sat, rulings, limits);

function timed(right: number, length: number): Sat {
  const prompts = promptsOf('times-7', length);
  const did = allRight(prompts, 1000).map((one, place) => (place < right ? one : null));
  return stamped(madeSat(prompts, did, { clock: { allowanceMs: 45_000, sight: 'thread' } }));
}

test('the band is told with its count and its limits (common practice, no source)', () => {
  expect(bandSentence(mark(timed(14, 25)), names)).toBe('Loose is 10 to 14 of 25 right by the bell.');
  expect(bandSentence(mark(timed(9, 25)), names)).toBe('Thin is under 10 of 25 right by the bell.');
  expect(bandSentence(mark(timed(15, 25)), names)).toBe('Even is 15 to 19 of 25 right by the bell.');
  expect(bandSentence(mark(timed(25, 25)), names)).toBe('Firm is 20 to 25 of 25 right by the bell.');
});

test('for another length the limits are scaled and rounded up', () => {
  expect(bandSentence(mark(timed(6, 10)), names)).toBe('Even is 6 to 7 of 10 right by the bell.');
  expect(bandSentence(mark(timed(8, 10)), names)).toBe('Firm is 8 to 10 of 10 right by the bell.');
});

test('a renamed band is called by its new name', () => {
  expect(bandSentence(mark(timed(14, 25)), { ...names, loose: 'Airy' })).toContain('Airy');
});

test('where there is no band the reason is told, the ruling before the circumstance', () => {
  const interrupted = stamped(teosSheet({ away: [{ why: 'hidden', fromMs: 1, toMs: 2, afterVisits: 0 }] }));
  expect(bandSentence(mark(interrupted), names)).toMatch(/interrupted/);
  expect(bandSentence(mark(interrupted, { ...noRulings, bandAnyway: true }), names)).toMatch(/Loose/);
  expect(bandSentence(mark(interrupted, { ...noRulings, voided: true }), names)).toMatch(/does not count/);
  expect(bandSentence(mark(stamped(teosSheet()), { ...noRulings, notOwnWork: true }), names)).toMatch(
    /somebody helped/,
  );
  expect(bandSentence(mark(stamped(teosSheet({ second: true }))), names)).toMatch(/second sheet/);
  expect(bandSentence(mark(stamped(wrensSheet())), names)).toMatch(/no clock/);
});

test('the short sentence tells a band, a count without one, or a sheet without a clock', () => {
  const teo = stamped(teosSheet());
  expect(resultSentence(teo, mark(teo), names)).toBe('Loose: 14 right by the bell, of 25.');
  const second = stamped(teosSheet({ second: true }));
  expect(resultSentence(second, mark(second), names)).toBe(
    '14 right by the bell, of 25; no band, a second sheet.',
  );
  const wren = stamped(wrensSheet());
  expect(resultSentence(wren, mark(wren), names)).toBe('9 of 10 right, without a clock.');
  expect(resultSentence(wren, mark(wren, { ...noRulings, voided: true }), names)).toBe(
    '9 of 10 right, without a clock. It does not count.',
  );
});

test('what went missing is told by what it was', () => {
  expect(leftSentence(mark(stamped(teosSheet())))).toBe('One wrong, one skipped, eight not reached.');
  expect(leftSentence(mark(timed(25, 25)))).toBe('');
});

test('an untimed sheet’s beginning is told as what it counts for like a timed one', () => {
  expect(wouldBeSentence(45, 1, 'Thin')).toBe(
    'One was right in the first 45\u00a0s; counted like a sheet with the clock, that is Thin.',
  );
  expect(wouldBeSentence(45, 12, 'Loose')).toBe(
    '12 were right in the first 45\u00a0s; counted like a sheet with the clock, that is Loose.',
  );
});
