import type { Band } from '../../core/marking/band';
import { type ChildSettings, defaultChildSettings } from '../../core/record/settings';

/** The child settings that are typed as numbers, as the page names them. */
export type NumberKey =
  | 'length'
  | 'allowanceS'
  | 'firm'
  | 'even'
  | 'loose'
  | 'rowsFirm'
  | 'rowsEven'
  | 'rowsLoose'
  | 'rowsThin'
  | 'keptPercent';

export const numberKeys: readonly NumberKey[] = [
  'length',
  'allowanceS',
  'keptPercent',
  'firm',
  'even',
  'loose',
  'rowsFirm',
  'rowsEven',
  'rowsLoose',
  'rowsThin',
];

/** Why a number can't be taken. */
export type NumberFault =
  | 'notWhole'
  | 'length'
  | 'allowanceZero'
  | 'allowanceRange'
  | 'keptRange'
  | 'limitRange'
  | 'limitOrder'
  | 'rowsRange';

export type Numbers = Readonly<Record<NumberKey, number>>;

/** What was typed, read: the changes to record, or what is wrong with which field. */
export type NumbersReading =
  | { readonly ok: true; readonly changes: Partial<ChildSettings> }
  | { readonly ok: false; readonly faults: Partial<Record<NumberKey, NumberFault>> };

/** The longest allowance, s: twenty times the usual one, so that anybody's limit can be stretched tenfold. */
export const longestAllowanceS = 900;
const shortestAllowanceS = 5;
const mostKeptPercent = 80;
const mostRows = 5;
const limitsOf = 25;

/** A child's settings as the numbers on the page. */
export function numbersOf({ length, allowanceS, limits, rows, keptShare }: ChildSettings): Numbers {
  return {
    length,
    allowanceS,
    ...limits,
    rowsFirm: rows.firm,
    rowsEven: rows.even,
    rowsLoose: rows.loose,
    rowsThin: rows.thin,
    keptPercent: Math.round(keptShare * 100),
  };
}

/** The usual numbers, stated beside each field. */
export const usualNumbers: Numbers = numbersOf(defaultChildSettings);

/** Reads all the fields together: lengths in facts, allowance in seconds, limits of 25, shares in per cent. */
export function readNumbers(texts: Readonly<Record<NumberKey, string>>, now: ChildSettings): NumbersReading {
  const faults: Partial<Record<NumberKey, NumberFault>> = {};
  const read: Partial<Record<NumberKey, number>> = {};
  for (const key of numberKeys) {
    const text = texts[key].trim();
    const number = /^\d{1,4}$/.test(text) ? Number(text) : null;
    const fault = number === null ? 'notWhole' : faultOf(key, number);
    if (fault) faults[key] = fault;
    if (number !== null) read[key] = number;
  }
  const numbers = { ...numbersOf(now), ...read };
  if (!faults.firm && !faults.even && numbers.even >= numbers.firm) faults.even = 'limitOrder';
  if (!faults.even && !faults.loose && numbers.loose >= numbers.even) faults.loose = 'limitOrder';
  return Object.keys(faults).length > 0
    ? { ok: false, faults }
    : { ok: true, changes: changed(numbers, now) };
}

function faultOf(key: NumberKey, number: number): NumberFault | null {
  switch (key) {
    case 'length':
      return number >= 5 && number <= 100 && number % 5 === 0 ? null : 'length';
    case 'allowanceS':
      if (number === 0) return 'allowanceZero';
      return isWithin(number, shortestAllowanceS, longestAllowanceS) ? null : 'allowanceRange';
    case 'keptPercent':
      return isWithin(number, 0, mostKeptPercent) ? null : 'keptRange';
    case 'firm':
    case 'even':
    case 'loose':
      return isWithin(number, 1, limitsOf) ? null : 'limitRange';
    case 'rowsFirm':
    case 'rowsEven':
    case 'rowsLoose':
    case 'rowsThin':
      return isWithin(number, 0, mostRows) ? null : 'rowsRange';
  }
}

function isWithin(number: number, least: number, most: number): boolean {
  return number >= least && number <= most;
}

function changed(numbers: Numbers, now: ChildSettings): Partial<ChildSettings> {
  const { firm, even, loose, length, allowanceS } = numbers;
  const rows: Record<Band, number> = {
    firm: numbers.rowsFirm,
    even: numbers.rowsEven,
    loose: numbers.rowsLoose,
    thin: numbers.rowsThin,
  };
  const before = numbersOf(now);
  const isChanged = (...keys: readonly NumberKey[]) => keys.some((key) => numbers[key] !== before[key]);
  return {
    ...(isChanged('length') ? { length } : {}),
    ...(isChanged('allowanceS') ? { allowanceS } : {}),
    ...(isChanged('keptPercent') ? { keptShare: numbers.keptPercent / 100 } : {}),
    ...(isChanged('firm', 'even', 'loose') ? { limits: { firm, even, loose } } : {}),
    ...(isChanged('rowsFirm', 'rowsEven', 'rowsLoose', 'rowsThin') ? { rows } : {}),
  };
}
