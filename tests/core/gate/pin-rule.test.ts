import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readPin } from '../../../src/core/gate/pin-rule';

const digits = (minLength: number, maxLength: number) =>
  fc.string({ unit: fc.constantFrom(...'0123456789'), minLength, maxLength });

test('four to eight digits are a PIN, leading noughts and all', () => {
  expect(readPin('0007')).toEqual({ ok: true, pin: '0007' });
  fc.assert(fc.property(digits(4, 8), (pin) => void expect(readPin(pin)).toEqual({ ok: true, pin })));
});

test('three digits are too few and nine too many', () => {
  expect(readPin('123')).toEqual({ ok: false, fault: 'tooShort' });
  expect(readPin('123456789')).toEqual({ ok: false, fault: 'tooLong' });
  fc.assert(fc.property(digits(1, 3), (pin) => void expect(readPin(pin).ok).toBe(false)));
  fc.assert(fc.property(digits(9, 30), (pin) => void expect(readPin(pin).ok).toBe(false)));
});

test('a letter, a sign or a digit of another script is no PIN', () => {
  for (const text of ['12a4', '-1234', '12.34', '１２３４', '٣٤٥٦']) {
    expect(readPin(text)).toEqual({ ok: false, fault: 'notDigits' });
  }
});

test('nothing, or nothing but spaces, is said to be empty', () => {
  for (const text of ['', '   ', '\t\n']) expect(readPin(text)).toEqual({ ok: false, fault: 'empty' });
});

test('spaces that came with pasting are dropped', () => {
  expect(readPin(' 48 26\n')).toEqual({ ok: true, pin: '4826' });
});
