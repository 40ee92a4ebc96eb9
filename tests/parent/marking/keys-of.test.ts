import { expect, test } from 'vitest';
import type { Sat, Visit } from '../../../src/core/record/sat';
import { keysOf } from '../../../src/parent/marking/keys-of';

const visit: Visit = {
  place: 0,
  onsetMs: 1000,
  onsetBy: 'frame',
  keys: [
    ['4', 2000, 'touch'],
    ['back', 2500, 'keys'],
    ['5', 3250, 'keys'],
    ['done', 3500, 'keys'],
    ['6', 3600, 'keys'],
  ],
  late: 1,
  end: 'taken',
  endMs: 3500,
  given: '5',
  took: 'done',
};
const sat = (visits: readonly Visit[]) => ({ visits }) as Sat;

test('every key stands with its time after the card’s onset, its way of entry, and late ones as late', () => {
  expect(keysOf(sat([visit]), 0)).toBe(
    '4 1.00 s by touch, back 1.50 s, 5 2.25 s, done 2.50 s, 6 2.60 s (late, entered nowhere), taken',
  );
});

test('a card opened again tells what stood on it; visits follow one another', () => {
  const again: Visit = {
    ...visit,
    from: '4',
    keys: [['skip', 5000, 'keys']],
    late: 0,
    end: 'skipped',
    onsetMs: 4000,
  };
  expect(keysOf(sat([{ ...visit, keys: [], late: 0, end: 'left' }, again]), 0)).toBe(
    'left, void | “4” stood there, skip 1.00 s, skipped',
  );
});

test('where times were not kept the keys stand alone, and a card never seen has none', () => {
  const bare: Visit = { ...visit, onsetMs: null, keys: [['4', null, 'touch']], late: 0 };
  expect(keysOf(sat([bare]), 0)).toBe('4 by touch, taken');
  expect(keysOf(sat([bare]), 1)).toBe('no key');
});
