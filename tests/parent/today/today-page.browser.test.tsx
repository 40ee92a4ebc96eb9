import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Draft } from '../../../src/core/record/record';
import { setById } from '../../../src/core/set/teaching-sets';
import { spreadFacts } from '../../../src/core/spread/spread-facts';
import { place } from '../../../src/parent/place';
import { findings } from '../axe';
import { fakeDesk } from '../fake-desk';
import { promptsOf, teosSheet, twoChildren } from '../made-household';
import { allRight, madeSat } from '../made-sat';
import { openPages } from '../open-pages';
import { until } from '../until';

async function todayOf(child: string, more: readonly Draft[] = []) {
  const desk = fakeDesk('2026-11-25', [...twoChildren, ...more]);
  const view = await openPages(desk);
  const card = await view.findByRole('region', { name: child });
  const button = (name: string | RegExp) =>
    [...card.querySelectorAll('button, summary')].find((one) => {
      const text = one.getAttribute('aria-label') ?? one.textContent ?? '';
      return typeof name === 'string' ? text === name : name.test(text);
    });
  const press = async (name: string | RegExp) => {
    const found = button(name);
    if (!found) throw new Error(`no button ${name}`);
    await userEvent.click(found);
  };
  const says = (text: string) => until(() => expect(card.textContent).toContain(text));
  return { ...view, desk, card, button, press, says };
}

test('in two taps today’s clock is taken away, and Undo brings it back', async () => {
  const { desk, press, says } = await todayOf('Teo');
  await says('with 45\u00a0s on the clock');
  await press('Only today …');
  await press('Without the clock');
  await says('without the clock');
  expect(desk.drafts).toEqual([
    { kind: 'dayChanged', child: 'teo', day: '2026-11-25', change: { timed: false } },
  ]);
  await press('Undo: Without the clock today.');
  await says('with 45\u00a0s on the clock');
});

test('in two taps today’s sheet is shorter, or skipped, each with its Undo', async () => {
  const { press, says, button } = await todayOf('Teo');
  await press('Only today …');
  await press('10 facts');
  await says('No sheet yet: 10 facts');
  expect(button('15 facts')).toBeUndefined();
  await press('Skip today');
  await says('Skipped for today.');
  await press('Undo: Skipped today.');
  await says('No sheet yet: 10 facts');
  await press('Undo: Ten facts today.');
  await says('No sheet yet: 25 facts');
});

test('rows that wait are sent on the parent’s word, or waived', async () => {
  const onWord: Draft = { kind: 'childSettingsChanged', child: 'teo', changes: { rowsSent: 'parent' } };
  const { desk, press, says } = await todayOf('Teo', [onWord, teosSheet()]);
  await says('By Settings this count brings one extra row. It waits for your word.');
  await press('Send one row');
  await says('Still to do: an extra row, putting wrong answers right');
  expect(desk.drafts.at(-1)).toMatchObject({
    kind: 'ruled',
    child: 'teo',
    ruling: { what: 'rows', rows: 1 },
  });
});

test('an interrupted sheet is to be read, and may be given its band there and then', async () => {
  const away = [{ why: 'hidden', fromMs: 20_000, toMs: 25_000, afterVisits: 5 }] as const;
  const { press, says } = await todayOf('Teo', [teosSheet({ away })]);
  await says('The sheet was interrupted');
  await press('Give it its band');
  await says('Loose: ');
  await todayOf('Teo', [teosSheet({ away })]).then((again) => again.press('Read it'));
  expect(place.value.page).toBe('marking');
});

test('a child without a set leads to where one is chosen', async () => {
  const { press, says } = await todayOf('Juniper', [
    { kind: 'childAdded', child: 'juniper', name: 'Juniper', edge: 1 },
  ]);
  await says('Juniper has no set to learn from.');
  await press('Choose a set');
  expect(place.value).toMatchObject({ page: 'children', child: 'juniper' });
});

test('when the set is accurate the clock is proposed, never turned on by itself', async () => {
  const prompts = promptsOf('plus-2', 25);
  const sheets = ['2026-11-23', '2026-11-24'].map((day) =>
    madeSat(prompts, allRight(prompts, 2000), { child: 'wren', day }),
  );
  const { desk, press, says } = await todayOf('Wren', sheets);
  await says('“Plus 2” is accurate: at least 45 of the last 50 answers to it without the clock');
  expect(desk.household.value.children[0]?.settings.timed).toBe(false);
  await press('Turn the clock on');
  await until(() => expect(desk.household.value.children[0]?.settings.timed).toBe(true));
});

test('a sheet being sat can be stopped', async () => {
  const { desk, press, button, says } = await todayOf('Wren');
  expect(button('Stop the sheet being sat')).toBeUndefined();
  desk.setSitting(['wren']);
  await until(() => expect(button('Stop the sheet being sat')).toBeDefined());
  await says('Begun and not finished yet');
  await press('Stop the sheet being sat');
  expect(desk.stopped).toEqual(['wren']);
});

test('an archived child is not asked to sit anything', async () => {
  const { queryByRole } = await todayOf('Wren', [{ kind: 'childChanged', child: 'teo', archived: true }]);
  expect(queryByRole('region', { name: 'Teo' })).toBeNull();
});

test('a child without a set is led to choosing one, and nothing else', async () => {
  const { card, button } = await todayOf('Juniper', [
    { kind: 'childAdded', child: 'juniper', name: 'Juniper', edge: 1 },
  ]);
  expect(card.querySelector('button.main')?.textContent).toBe('Choose a set');
  expect(button('Hand over to Juniper')).toBeUndefined();
  expect(button('Only today …')).toBeUndefined();
});

test('what was done says so, has its Undo, and takes the focus of the button that went with it', async () => {
  const onWord: Draft = { kind: 'childSettingsChanged', child: 'teo', changes: { rowsSent: 'parent' } };
  const { card, press, says } = await todayOf('Teo', [onWord, teosSheet()]);
  await press('Send none');
  await says('No extra rows.');
  await until(() => expect(document.activeElement).toBe(card.querySelector('.kept')));
  await press('Undo');
  await says('It waits for your word.');
  await says('Taken back.');
});

const askedFor: Draft = { kind: 'spreadAsked', child: 'juniper', ops: ['add'] };

/** Both days of Juniper’s spread sat: all right and quick but past ten. */
function spreadSat(): readonly Draft[] {
  const weak = new Set<string>(setById('past-ten')?.facts ?? []);
  // The desk numbers its records: twoChildren are six, the child the seventh, the spread asked the eighth.
  const spread = 'record-8';
  return ([0, 1] as const).map((part) => {
    const prompts = spreadFacts(['add'], part, 5);
    const did = allRight(prompts, 1500).map((one, place) =>
      weak.has(prompts[place] ?? '') ? { gave: '99', ms: 1500 } : one,
    );
    const day = part === 0 ? '2026-11-23' : '2026-11-24';
    return madeSat(prompts, did, { child: 'juniper', set: null, day, spread: { spread, part } });
  });
}

test('a spread is a sheet of every set on two days, and then proposes what to keep and to begin with', async () => {
  const juniper: Draft = { kind: 'childAdded', child: 'juniper', name: 'Juniper', edge: 1 };
  const { says, press, desk, button, container } = await todayOf('Juniper', [
    juniper,
    askedFor,
    ...spreadSat(),
  ]);
  await says('What the two days say');
  await until(() => expect(button(/^Do so: begin with/)).toBeDefined());
  expect(await findings(container)).toEqual([]);
  await press(/^Do so: begin with/);
  const child = () => desk.household.value.children.find(({ id }) => id === 'juniper');
  await until(() => expect(child()?.currentSet).not.toBeNull());
  expect(child()?.keptSets).toContain('plus-0-and-1');
  expect(child()?.keptSets).not.toContain('past-ten');
  expect(child()?.ticked.has('add-0-1')).toBe(true);
  expect(child()?.spread).toBeNull();
  await press('Undo');
  await until(() => expect(child()?.spread).not.toBeNull());
  expect(child()).toMatchObject({ currentSet: null, keptSets: [] });
  expect(child()?.ticked.size).toBe(0);
});

test('before its second day a spread says which day it is, and changes neither length nor clock', async () => {
  const juniper: Draft = { kind: 'childAdded', child: 'juniper', name: 'Juniper', edge: 1 };
  const [first] = spreadSat();
  const { says, press, button } = await todayOf('Juniper', [juniper, askedFor, ...(first ? [first] : [])]);
  await says('facts from every set, without the clock; day 2 of 2.');
  await press('Only today …');
  expect(button('Skip today')).toBeDefined();
  expect(button('With the clock')).toBeUndefined();
  expect(button('10 facts')).toBeUndefined();
});

test('a wrong answer that looks like a slip is ruled in one tap, and Undo brings the question back', async () => {
  // 4 × 7 = 28 answered 82: the right digits, turned round.
  const prompts = promptsOf('times-7', 25);
  const turned = allRight(prompts, 2500).map((one, place) =>
    prompts[place] === 'mul-4-7' ? { gave: '82', ms: 2500 } : one,
  );
  const sheet = madeSat(prompts, turned, { child: 'teo', set: 'times-7' });
  const { desk, card, press, says, button } = await todayOf('Teo', [sheet]);
  await says('4 × 7: wrote 82. Looks like: the right digits, turned round.');
  expect(await findings(card)).toEqual([]);
  await press('A slip: 4 × 7');
  await says('4 × 7: a slip.');
  expect(desk.drafts.at(-1)).toMatchObject({
    kind: 'ruled',
    child: 'teo',
    ruling: { what: 'slip', place: prompts.indexOf('mul-4-7'), slip: true },
  });
  await press('Undo');
  await until(() => expect(button('A miscalculation: 4 × 7')).toBeDefined());
});

test('in two taps a step is handed to another day, and comes back with Undo', async () => {
  const { desk, press, says, button } = await todayOf('Teo');
  await press('Only today …');
  await press('The sheet');
  await says('The sheet on another day.');
  expect(desk.drafts.at(-1)).toMatchObject({
    kind: 'dayChanged',
    child: 'teo',
    change: { later: ['sheet'] },
  });
  await until(() => expect(button('The sheet')).toBeUndefined());
  await press('Undo: The sheet on another day.');
  await until(() => expect(button('The sheet')).toBeDefined());
});

test('on the last school day of the week one tap leads to what to teach on Monday', async () => {
  const friday = await openPages(fakeDesk('2026-11-27', twoChildren));
  await userEvent.click(await friday.findByRole('button', { name: 'What to teach on Monday' }));
  await friday.findByRole('heading', { level: 1, name: 'What to teach on Monday 30 November 2026' });
  const wednesday = await openPages(fakeDesk('2026-11-25', twoChildren));
  await wednesday.findByRole('region', { name: 'Teo' });
  expect(wednesday.queryByRole('button', { name: 'What to teach on Monday' })).toBeNull();
});
