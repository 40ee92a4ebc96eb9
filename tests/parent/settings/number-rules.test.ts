import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultChildSettings } from '../../../src/core/record/settings';
import {
  type NumberKey,
  numberKeys,
  numbersOf,
  readNumbers,
  usualNumbers,
} from '../../../src/parent/settings/number-rules';

const now = defaultChildSettings;
const texts = (other: Partial<Record<NumberKey, string>> = {}) => {
  const usual = Object.fromEntries(numberKeys.map((key) => [key, `${usualNumbers[key]}`]));
  return { ...usual, ...other } as Record<NumberKey, string>;
};
const faultOf = (key: NumberKey, text: string) => {
  const reading = readNumbers(texts({ [key]: text }), now);
  return reading.ok ? null : (reading.faults[key] ?? null);
};

test('the usual numbers are the trade’s defaults (common practice, no source)', () => {
  expect(usualNumbers).toEqual({
    length: 25,
    allowanceS: 45,
    keptPercent: 20,
    firm: 20,
    even: 15,
    loose: 10,
    rowsFirm: 0,
    rowsEven: 0,
    rowsLoose: 1,
    rowsThin: 2,
  });
});

test('numbers left alone are no change', () => {
  expect(readNumbers(texts(), now)).toEqual({ ok: true, changes: {} });
});

test('only what was changed is recorded, limits and rows as a whole', () => {
  expect(readNumbers(texts({ length: '10', firm: '22' }), now)).toEqual({
    ok: true,
    changes: { length: 10, limits: { firm: 22, even: 15, loose: 10 } },
  });
  expect(readNumbers(texts({ rowsThin: '3', keptPercent: '50' }), now)).toEqual({
    ok: true,
    changes: { keptShare: 0.5, rows: { firm: 0, even: 0, loose: 1, thin: 3 } },
  });
});

test('a length is a multiple of five from 5 to 100', () => {
  fc.assert(
    fc.property(fc.nat({ max: 300 }), (length) => {
      const isGood = length % 5 === 0 && length >= 5 && length <= 100;
      expect(faultOf('length', `${length}`)).toBe(isGood ? null : 'length');
    }),
  );
});

test('an allowance of 0 s is told apart from one that is too short or too long', () => {
  expect(faultOf('allowanceS', '0')).toBe('allowanceZero');
  expect(faultOf('allowanceS', '4')).toBe('allowanceRange');
  expect(faultOf('allowanceS', '5')).toBeNull();
  expect(faultOf('allowanceS', '900')).toBeNull();
  expect(faultOf('allowanceS', '901')).toBe('allowanceRange');
});

test('the usual allowance can be stretched ten times (WCAG 2.2, 2.2.1)', () => {
  expect(faultOf('allowanceS', `${usualNumbers.allowanceS * 10}`)).toBeNull();
});

test('what is no whole number is said to be none', () => {
  for (const text of ['', 'ten', '4.5', '-5', '1e2', '12345'])
    expect(faultOf('length', text)).toBe('notWhole');
});

test('each limit is lower than the one before it', () => {
  expect(faultOf('even', '20')).toBe('limitOrder');
  expect(faultOf('loose', '15')).toBe('limitOrder');
  expect(faultOf('firm', '26')).toBe('limitRange');
  expect(faultOf('loose', '0')).toBe('limitRange');
  fc.assert(
    fc.property(fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: 1, max: 25 }))), (limits) => {
      const [firm = 0, even = 0, loose = 0] = limits;
      const reading = readNumbers(texts({ firm: `${firm}`, even: `${even}`, loose: `${loose}` }), now);
      expect(reading.ok).toBe(firm > even && even > loose);
    }),
  );
});

test('a band brings up to five rows, and the kept share leaves room for the set', () => {
  expect(faultOf('rowsThin', '5')).toBeNull();
  expect(faultOf('rowsThin', '6')).toBe('rowsRange');
  expect(faultOf('keptPercent', '0')).toBeNull();
  expect(faultOf('keptPercent', '81')).toBe('keptRange');
});

test('what is read back from the settings shows as it was typed', () => {
  const reading = readNumbers(texts({ keptPercent: '35', allowanceS: '60' }), now);
  if (!reading.ok) throw new Error('refused');
  expect(numbersOf({ ...now, ...reading.changes })).toEqual({
    ...usualNumbers,
    keptPercent: 35,
    allowanceS: 60,
  });
});
