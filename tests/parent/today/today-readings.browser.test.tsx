import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Draft } from '../../../src/core/record/record';
import { place } from '../../../src/parent/place';
import { findings } from '../axe';
import { boatDesk, crew } from '../boat-desk';
import { type FakeDesk, fakeDesk } from '../fake-desk';
import { promptsOf, twoChildren } from '../made-household';
import { allRight, madeSat } from '../made-sat';
import { openPages } from '../open-pages';
import { until } from '../until';

async function cardOf(desk: FakeDesk, child: string) {
  const view = await openPages(desk);
  const card = await view.findByRole('region', { name: child });
  const says = (text: string | RegExp) =>
    until(() => expect(card.textContent?.replaceAll('\u00a0', ' ')).toMatch(text));
  const press = async (name: string | RegExp) => {
    await until(() => expect(buttonOf(card, name)).toBeDefined());
    await userEvent.click(buttonOf(card, name) as HTMLElement);
  };
  return { ...view, desk, card, says, press };
}

function buttonOf(card: HTMLElement, name: string | RegExp): Element | undefined {
  return [...card.querySelectorAll('button, summary')].find((one) => {
    const text = one.getAttribute('aria-label') ?? one.textContent ?? '';
    return typeof name === 'string' ? text === name : name.test(text);
  });
}

const childOf = (desk: FakeDesk, id: string) =>
  desk.household.value.children.find((child) => child.id === id);

test('the day’s sheet speaks with its evidence before anything is asked of the parent', async () => {
  const { card, says, container } = await cardOf(boatDesk(), 'Teo');
  await says(/Sheet done\. .*How do you know\?/);
  const said = card.querySelector('.said-reading');
  const needs = card.querySelector('.actions');
  expect(
    said && needs && said.compareDocumentPosition(needs) & Node.DOCUMENT_POSITION_FOLLOWING,
  ).toBeTruthy();
  expect(await findings(container)).toEqual([]);
});

test('ready to move on: one tap keeps the set and starts the next without the clock, another takes it back', async () => {
  const { desk, says, press } = await cardOf(boatDesk(), 'Juniper');
  await says(/Juniper looks ready to move on/);
  await press(/^Keep “Divide by 9” in practice and start/);
  await says(/has begun, without the clock/);
  expect(desk.drafts.map(({ kind }) => kind)).toEqual(['setKept', 'setStarted', 'childSettingsChanged']);
  expect(childOf(desk, crew.juniper.id)).toMatchObject({ settings: { timed: false } });
  expect(childOf(desk, crew.juniper.id)?.keptSets).toContain('divide-by-9');
  expect(document.activeElement?.textContent).toBe('Undo');
  await press('Undo');
  await says(/looks ready to move on/);
  expect(childOf(desk, crew.juniper.id)).toMatchObject({
    currentSet: 'divide-by-9',
    settings: { timed: true },
  });
});

test('where moving on is proposed the clock is not, though the set is accurate', async () => {
  const { card, says } = await cardOf(boatDesk(), 'Wren');
  await says(/Wren looks ready to move on/);
  await says(/A spoken check waits|Hand over to Wren/);
  expect(card.textContent).not.toMatch(/[Tt]urn the clock on/);
});

test('the proposal leads to the facts it rests on', async () => {
  const { press } = await cardOf(boatDesk(), 'Juniper');
  await press('See the facts');
  expect(place.value).toMatchObject({ page: 'facts', child: crew.juniper.id });
});

const sevens = promptsOf('times-7', 25);
const sheet: Draft = madeSat(sevens, allRight(sevens, 1500), {
  child: 'teo',
  set: 'times-7',
  day: '2026-11-24',
});

test('before the first sheet with the clock of a set that is not accurate it says so, and one tap leaves it off', async () => {
  const { desk, says, press } = await cardOf(fakeDesk('2026-11-25', [...twoChildren, sheet]), 'Teo');
  await says(/The clock is on, but the set is not accurate yet/);
  await press('Leave the clock off for now');
  expect(desk.drafts).toEqual([{ kind: 'childSettingsChanged', child: 'teo', changes: { timed: false } }]);
  await until(() => expect(childOf(desk, 'teo')?.settings.timed).toBe(false));
});

test('the clock for today only asks the same', async () => {
  const { says, press, card } = await cardOf(fakeDesk('2026-11-25', twoChildren), 'Wren');
  expect(card.textContent).not.toContain('the set is not accurate yet');
  await press('Only today …');
  await press('With the clock');
  await says(/The clock is on, but the set is not accurate yet/);
});

/** Numbers to copy so slowly that 20 answers can't be entered in 45 s. */
function slowCopies(): readonly Draft[] {
  const numbers = Array.from({ length: 30 }, (_, place) => (place % 2 === 0 ? 3 + (place % 6) : 21 + place));
  const prompts = numbers.map((number) => `copy-${number}` as const);
  return [
    madeSat(prompts, allRight(prompts, 3000), {
      child: 'teo',
      purpose: 'practice',
      set: null,
      day: '2026-11-23',
    }),
  ];
}

/** With the one above, fifty answers right: the set is accurate. */
const another: Draft = madeSat(sevens, allRight(sevens, 1500), {
  child: 'teo',
  set: 'times-7',
  day: '2026-11-23',
});

test('where hands are too slow for a band it warns, and one tap allows the time that restores it', async () => {
  const desk = fakeDesk('2026-11-25', [...twoChildren, ...slowCopies(), another, sheet]);
  const { says, press } = await cardOf(desk, 'Teo');
  await says(/out of reach by keying alone/);
  await press(/^Allow \d+\u00a0s from now on$/);
  await until(() => expect(childOf(desk, 'teo')?.settings.allowanceS).toBeGreaterThan(45));
  await until(() => expect(buttonOf(document.body, /^Allow/)).toBeUndefined());
});

test('where the clock had better be off, slow hands get no more seconds with it', async () => {
  const { says, card } = await cardOf(
    fakeDesk('2026-11-25', [...twoChildren, ...slowCopies(), sheet]),
    'Teo',
  );
  await says(/better leave it off for now/);
  expect(card.textContent).not.toMatch(/out of reach|Allow \d+ s/);
});

test('hands that were never measured get no warning', async () => {
  const { says, card } = await cardOf(fakeDesk('2026-11-25', [...twoChildren, sheet]), 'Teo');
  await says(/the set is not accurate yet/);
  expect(card.textContent).not.toContain('out of reach');
});

test('during a clock trial the day is what was drawn; taking the clock away for today misses the day, Undo takes it up', async () => {
  const order = ['thread', 'noClock', 'thread', 'noClock', 'noClock', 'thread', 'noClock', 'thread'] as const;
  const drawn: Draft = { kind: 'trialDrawn', child: 'wren', set: 'plus-2', plan: 'eight', order };
  const { says, press } = await cardOf(fakeDesk('2026-11-25', [...twoChildren, drawn]), 'Wren');
  await says(/with 45 s on the clock\.Day 1 of 8 of the clock trial/);
  await press('Only today …');
  await press('Without the clock');
  await says(/without the clock\..*What you changed for today holds/);
  await press('Undo: Without the clock today.');
  await says(/with 45 s on the clock\.Day 1 of 8/);
});
