import { expect, test } from 'vitest';
import type { Draft } from '../../../src/core/record/record';
import { defaultChildSettings, defaultHouseholdSettings } from '../../../src/core/record/settings';
import { changeSentences, daySentence } from '../../../src/parent/today/words';
import { fakeDesk } from '../fake-desk';
import { teosSheet, twoChildren, wrensSheet } from '../made-household';

const names = defaultHouseholdSettings.bandNames;

function lineOf(child: string, more: readonly Draft[] = [], set = 'the set'): string {
  const desk = fakeDesk('2026-11-25', [...twoChildren, ...more]);
  const settings = desk.household.value.children.find(({ id }) => id === child)?.settings;
  return daySentence(desk.days.value.get(child) ?? null, settings ?? defaultChildSettings, names, set);
}

test('a sheet not sat yet is told with its length, set and clock', () => {
  expect(lineOf('wren', [], 'Plus 2')).toBe('No sheet yet: 10 facts of “Plus 2”, without the clock.');
  expect(lineOf('teo', [], 'Times 7')).toBe('No sheet yet: 25 facts of “Times 7”, with 45 s on the clock.');
});

test('a hidden clock is told as hidden', () => {
  expect(
    lineOf('teo', [{ kind: 'childSettingsChanged', child: 'teo', changes: { sight: 'hidden' } }]),
  ).toMatch(/on the clock, hidden\.$/);
});

test('today’s change is in the line', () => {
  const change: Draft = {
    kind: 'dayChanged',
    child: 'teo',
    day: '2026-11-25',
    change: { timed: false, length: 5 },
  };
  expect(lineOf('teo', [change])).toBe('No sheet yet: 5 facts of “the set”, without the clock.');
});

test('a sheet sat is told with its result and what is left', () => {
  expect(lineOf('wren', [wrensSheet()])).toBe(
    'Sheet done. 9 of 10 right, without a clock. Still to do: mending.',
  );
  expect(lineOf('teo', [teosSheet()])).toBe(
    'Sheet done. Loose: 14 right by the bell, of 25. Still to do: an extra row, mending.',
  );
});

test('a finished day is done, a skipped one skipped, and one without a set has nothing to do', () => {
  const clean = wrensSheet({ prompts: [], visits: [] });
  expect(lineOf('wren', [clean])).toMatch(/^Done\. /);
  expect(
    lineOf('wren', [{ kind: 'dayChanged', child: 'wren', day: '2026-11-25', change: { skip: true } }]),
  ).toBe('Skipped for today.');
  expect(lineOf('juniper', [{ kind: 'childAdded', child: 'juniper', name: 'Juniper', edge: 1 }])).toBe(
    'Nothing to do today.',
  );
});

test('each change that stands has its own sentence and its own way back', () => {
  expect(changeSentences({ timed: true, length: 10, skip: true }, defaultChildSettings)).toEqual([
    { says: 'With the clock today.', takeBack: { timed: false } },
    { says: 'Ten facts today.', takeBack: { length: 25 } },
    { says: 'Skipped today.', takeBack: { skip: false } },
  ]);
});

test('a change that changes nothing is not told', () => {
  expect(changeSentences({ timed: false, length: 25, skip: false }, defaultChildSettings)).toEqual([]);
});
