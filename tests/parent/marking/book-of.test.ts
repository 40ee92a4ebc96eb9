import { expect, test } from 'vitest';
import { bookOf, findEntry, partsOf } from '../../../src/parent/marking/book-of';
import { fakeDesk } from '../fake-desk';
import { teosSheet, twoChildren, wrensSheet } from '../made-household';

const desk = fakeDesk('2026-11-25', [
  ...twoChildren,
  teosSheet({ day: '2026-11-25' }),
  wrensSheet({ day: '2026-11-23' }),
  wrensSheet({ day: '2026-11-24' }),
]);
const household = desk.household.value;
const history = desk.history.value;
if (!history) throw new Error('no history');

test('every sitting is there, the newest day first whatever order they were stored in', () => {
  expect(bookOf(household, history).map(({ sat }) => sat.day)).toEqual([
    '2026-11-25',
    '2026-11-24',
    '2026-11-23',
  ]);
});

test('one child’s sittings can be had alone', () => {
  expect(bookOf(household, history, 'wren').map(({ child }) => child)).toEqual(['wren', 'wren']);
  expect(bookOf(household, history, 'nobody')).toEqual([]);
});

test('a sitting is found by its id and marked by its child’s limits', async () => {
  const [teos] = bookOf(household, history, 'teo');
  expect(findEntry(household, history, teos?.sat.id ?? '')?.marked.band).toBe('loose');
  expect(findEntry(household, history, 'no-such')).toBeNull();
  await desk.record([
    { kind: 'childSettingsChanged', child: 'teo', changes: { limits: { firm: 20, even: 14, loose: 10 } } },
  ]);
  const after = desk.history.value;
  if (!after) throw new Error('no history');
  expect(findEntry(desk.household.value, after, teos?.sat.id ?? '')?.marked.band).toBe('even');
});

test('what hangs on a sheet follows it to the child a ruling gives it', async () => {
  const [teos] = bookOf(household, history, 'teo');
  const sheet = teos?.sat.id ?? '';
  await desk.record([teosSheet({ purpose: 'row', of: sheet, clock: null })]);
  const after = desk.history.value;
  if (!after) throw new Error('no history');
  expect(partsOf(desk.household.value, after, sheet).map(({ sat }) => sat.purpose)).toEqual(['row']);
  expect(partsOf(desk.household.value, after, 'another')).toEqual([]);
});
