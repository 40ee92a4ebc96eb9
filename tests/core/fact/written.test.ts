import { describe, expect, test } from 'vitest';
import { factsOf } from '../../../src/core/fact/fact-list';
import { signs, writtenFact, writtenWhole } from '../../../src/core/fact/written';
import { known } from '../known';

describe('a written fact', () => {
  test('uses the true signs, never a hyphen, an x or a slash', () => {
    // The Unicode Standard: U+002B plus sign, U+2212 minus sign, U+00D7 multiplication sign, U+00F7 division sign.
    expect(Object.values(signs)).toEqual(['\u002b', '\u2212', '\u00d7', '\u00f7']);
  });

  test('reads in one line', () => {
    expect(writtenFact(known('add-6-2'))).toBe('6 + 2');
    expect(writtenFact(known('sub-17-8'))).toBe('17 − 8');
    expect(writtenFact(known('mul-7-8'))).toBe('7 × 8');
    expect(writtenFact(known('div-56-7'))).toBe('56 ÷ 7');
    expect(writtenWhole(known('div-56-7'))).toBe('56 ÷ 7 = 8');
  });

  test('reads differently from every other', () => {
    const written = (['add', 'sub', 'mul', 'div'] as const).flatMap((op) => factsOf(op, 12).map(writtenFact));
    expect(new Set(written).size).toBe(written.length);
  });
});
