import { expect, test } from 'vitest';
import type { Draft } from '../../../src/core/record/record';
import { defaultChildSettings, defaultHouseholdSettings } from '../../../src/core/record/settings';
import { changeSentences, daySentence, laterSteps, waitedSentence } from '../../../src/parent/today/words';
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
  expect(lineOf('teo', [], 'Times 7')).toBe(
    'No sheet yet: 25 facts of “Times 7”, with 45\u00a0s on the clock.',
  );
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
    'Sheet done. 9 of 10 right, without a clock. Still to do: putting wrong answers right, a similar fact for each.',
  );
  expect(lineOf('teo', [teosSheet()])).toBe(
    'Sheet done. Loose: 14 right by the bell, of 25. Still to do: an extra row, putting wrong answers right, a similar fact for each.',
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
  expect(changeSentences({ timed: true, length: 10, skip: true }, defaultChildSettings, false)).toEqual([
    { says: 'With the clock today.', takeBack: { timed: false } },
    { says: 'Ten facts today.', takeBack: { length: 25 } },
    { says: 'Skipped today.', takeBack: { skip: false } },
  ]);
});

test('a change that changes nothing is not told', () => {
  expect(changeSentences({ timed: false, length: 25, skip: false }, defaultChildSettings, false)).toEqual([]);
});

test('what the minutes left undone is named, with when it comes again', () => {
  expect(
    waitedSentence([
      { step: 'row', count: 1 },
      { step: 'mending', count: 4 },
      { step: 'twin', count: 2 },
    ]),
  ).toBe(
    'The day’s minutes are used up. Left undone: one extra row, four facts to put right and two similar facts. Putting right begins the next school day. Extra rows do not come again.',
  );
  expect(waitedSentence([{ step: 'sheet', count: 1 }])).toBe(
    'The day’s minutes are used up. Left undone: the sheet.',
  );
});

test('every step a child can sit can be handed to another day, mending with its twins as one', () => {
  const plan = fakeDesk('2026-11-25', twoChildren)
    .days.value.get('teo')
    ?.steps.find((step) => 'plan' in step);
  const sat = plan && 'plan' in plan ? plan.plan : null;
  if (!sat) throw new Error('Teo has nothing to sit');
  expect(
    laterSteps([
      { what: 'told' },
      { what: 'practice', plan: sat },
      { what: 'firstTry', plan: sat },
      { what: 'sheet', plan: { ...sat, lookBack: true } },
      { what: 'row', plan: sat },
      { what: 'mending', plan: sat, gave: [] },
      { what: 'twin', plan: sat },
      { what: 'lines', plan: sat },
      { what: 'piece' },
    ]),
  ).toEqual(['firstTry', 'lookBack', 'sheet', 'rows', 'mending', 'lines']);
});

test('each step handed on has its sentence, and its own way back keeps the others', () => {
  expect(changeSentences({ later: ['cards', 'rows'] }, defaultChildSettings, false)).toEqual([
    { says: 'The cards on another day.', takeBack: { later: ['rows'] } },
    { says: 'The extra rows not today.', takeBack: { later: ['cards'] } },
  ]);
});

test('a look-back that was put off has nothing to take back once its sheet is done', () => {
  const change = { later: ['lookBack'] } as const;
  expect(changeSentences(change, defaultChildSettings, false)).toHaveLength(1);
  expect(changeSentences(change, defaultChildSettings, true)).toEqual([]);
});

test('a day without school says so', () => {
  const line = fakeDesk('2026-11-28', [...twoChildren, wrensSheet()]);
  const [wren] = line.household.value.children;
  expect(
    daySentence(line.days.value.get('wren') ?? null, wren?.settings ?? defaultChildSettings, names, ''),
  ).toBe('No school today: nothing is asked. A sheet is there for a child who wants one.');
});
