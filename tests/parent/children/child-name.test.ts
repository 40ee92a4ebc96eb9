import { expect, test } from 'vitest';
import { readChildName } from '../../../src/parent/children/child-name';
import { fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';

const { children } = fakeDesk('2026-11-25', twoChildren).household.value;

test('a name is trimmed and its inner gaps made one', () => {
  expect(readChildName('  Anna   Bell ', children, null)).toEqual({ ok: true, name: 'Anna Bell' });
});

test('a child without a name is refused', () => {
  for (const text of ['', '   '])
    expect(readChildName(text, children, null)).toEqual({ ok: false, fault: 'empty' });
});

test('another child’s name is refused in any case, and one’s own is not', () => {
  expect(readChildName('wREN', children, null)).toEqual({ ok: false, fault: 'taken' });
  expect(readChildName('Wren', children, 'teo')).toEqual({ ok: false, fault: 'taken' });
  expect(readChildName('WREN', children, 'wren')).toEqual({ ok: true, name: 'WREN' });
});

test('an accent written in two ways is the same name', () => {
  const desk = fakeDesk('2026-11-25', [{ kind: 'childAdded', child: 'z', name: 'Zo\u00eb', edge: 0 }]);
  expect(readChildName('Zoe\u0308', desk.household.value.children, null)).toEqual({
    ok: false,
    fault: 'taken',
  });
});

test('thirty letters are the most, counted as signs', () => {
  expect(readChildName('a'.repeat(30), children, null).ok).toBe(true);
  expect(readChildName('a'.repeat(31), children, null)).toEqual({ ok: false, fault: 'tooLong' });
  expect(readChildName('\u{1F9F5}'.repeat(30), children, null).ok).toBe(true);
});
