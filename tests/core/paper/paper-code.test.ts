import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDigit } from '../../../src/core/paper/check-digit';
import { codeOf, type PaperSheet, paperSeeds, readCode } from '../../../src/core/paper/paper-code';
import { setNumber, setOfNumber } from '../../../src/core/paper/set-number';
import { teachingSets } from '../../../src/core/set/teaching-sets';

const own = { id: 'own-lock-and-towpath' };

const anySheet: fc.Arbitrary<PaperSheet> = fc.record({
  set: fc.constantFrom(...teachingSets.map(({ id }) => id), own.id),
  seed: fc.nat(paperSeeds - 1),
  shape: fc.record({
    length: fc.integer({ min: 1, max: 20 }).map((rows) => rows * 5),
    layout: fc.constantFrom('across' as const, 'stacked' as const),
    hasKept: fc.boolean(),
  }),
});

describe('the check digit', () => {
  test('is the published one: 572 has 4, 5724 leaves nothing over (Damm 2004)', () => {
    expect(checkDigit('572')).toBe('4');
    expect(checkDigit('5724')).toBe('0');
  });

  test('notices every digit mistyped and every two neighbours that changed places', () => {
    const number = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(number, fc.nat(), fc.integer({ min: 1, max: 9 }), (digits, at, by) => {
        const text = digits.join('');
        const whole = text + checkDigit(text);
        const place = at % text.length;
        const other = (Number(whole.charAt(place)) + by) % 10;
        const mistyped = whole.slice(0, place) + other + whole.slice(place + 1);
        expect(checkDigit(mistyped)).not.toBe('0');
        const [one, two] = [whole.charAt(place), whole.charAt(place + 1)];
        const swapped = whole.slice(0, place) + two + one + whole.slice(place + 2);
        expect(checkDigit(swapped) === '0').toBe(one === two);
      }),
    );
  });
});

describe('the code at the foot', () => {
  test('gives back set, seed and shape, however it is spaced', () => {
    fc.assert(
      fc.property(anySheet, fc.constantFrom('', ' ', '-', '  '), (sheet, between) => {
        const code = codeOf(sheet);
        expect(code).toMatch(/^\d{4} \d{3} \d{3}$/);
        expect(readCode(code.replaceAll(' ', between), [own])).toEqual(sheet);
      }),
    );
  });

  test('says of one digit mistyped that it does not add up, never another sheet', () => {
    fc.assert(
      fc.property(anySheet, fc.nat(9), fc.integer({ min: 1, max: 9 }), (sheet, at, by) => {
        const digits = codeOf(sheet).replaceAll(' ', '');
        const other = (Number(digits.charAt(at)) + by) % 10;
        expect(readCode(digits.slice(0, at) + other + digits.slice(at + 1), [own])).toBe('check');
      }),
    );
  });

  test.each([
    ['48a9 103 417', 'notDigits'],
    ['4829 103', 'length'],
    ['', 'length'],
  ])('of “%s” it says %s', (text, fault) => expect(readCode(text, [])).toBe(fault));

  test('of a set that is not here it says so', () => {
    const code = codeOf({
      set: own.id,
      seed: 1,
      shape: { length: 25, layout: 'across', hasKept: false },
    });
    expect(readCode(code, [])).toBe('noSet');
  });
});

describe('the number of a set', () => {
  test('is one for each teaching set, and the ones printed so far stay', () => {
    const numbers = teachingSets.map(({ id }) => setNumber(id));
    expect(numbers).toEqual(teachingSets.map((_, at) => at));
    // Printed sheets hold them: a new set gets a number behind all others, whatever its place in the order taught.
    expect(teachingSets).toHaveLength(58);
    expect(['plus-0-and-1', 'times-7', 'divide-by-12', 'mix-div-to-12'].map(setNumber)).toEqual([
      0, 35, 55, 57,
    ]);
  });

  test('leads to no set where two of a parent’s own share it', () => {
    expect(setOfNumber(setNumber(own.id), [own])).toBe(own.id);
    expect(setOfNumber(setNumber(own.id), [own, { ...own }])).toBeNull();
    expect(setOfNumber(199, [own])).toBeNull();
  });
});
