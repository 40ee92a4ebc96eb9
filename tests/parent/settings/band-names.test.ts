import { expect, test } from 'vitest';
import { readBandNames } from '../../../src/parent/settings/band-names';

const names = { firm: 'Firm', even: 'Even', loose: 'Loose', thin: 'Thin' };

test('four different names are taken, trimmed', () => {
  expect(readBandNames({ ...names, thin: '  Very  thin ' })).toEqual({
    ok: true,
    names: { ...names, thin: 'Very thin' },
  });
});

test('an empty name, a long one and one used twice are each told', () => {
  expect(readBandNames({ ...names, firm: ' ' })).toEqual({ ok: false, faults: { firm: 'empty' } });
  expect(readBandNames({ ...names, firm: 'a'.repeat(17) })).toEqual({
    ok: false,
    faults: { firm: 'tooLong' },
  });
  expect(readBandNames({ ...names, firm: 'even ' })).toEqual({
    ok: false,
    faults: { firm: 'twice', even: 'twice' },
  });
});
