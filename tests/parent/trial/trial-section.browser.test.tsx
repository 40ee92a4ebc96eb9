import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Draft } from '../../../src/core/record/record';
import { trialOrders } from '../../../src/readings/clock-trial/trial';
import { findings } from '../axe';
import { boatDesk, crew } from '../boat-desk';
import type { FakeDesk } from '../fake-desk';
import { fakeDesk } from '../fake-desk';
import { promptsOf, twoChildren } from '../made-household';
import { allRight, madeSat } from '../made-sat';
import { openPages } from '../open-pages';
import { until } from '../until';

async function trialOf(desk: FakeDesk, child: string) {
  const view = await openPages(desk, 'overTime');
  // By the element: a name that another button's begins with would be found twice.
  (await view.findByRole('button', { name: child })).click();
  const title = await view.findByRole('heading', { level: 2, name: 'A clock trial' });
  const section = title.closest('section') as HTMLElement;
  const says = (text: string | RegExp) =>
    until(() => expect(section.textContent?.replaceAll('\u00a0', ' ')).toMatch(text));
  const press = (name: string) => userEvent.click(view.getByRole('button', { name }));
  return { ...view, desk, title, section, says, press };
}

test.each([
  ['8 days', /about 3 times in 100/],
  ['10 days', /about once in 100/],
  [/^12 days/, /about 3 times in 100/],
])(
  'before it starts it says how seldom luck alone would give the clearest result: %s',
  async (plan, times) => {
    const { getByRole, says } = await trialOf(boatDesk(), 'Juniper');
    await userEvent.click(getByRole('radio', { name: plan }));
    await says(times);
  },
);

test('one tap draws the days, from the list of the plan, and says nothing of their order', async () => {
  const { desk, says, press, section, title, container } = await trialOf(boatDesk(), 'Juniper');
  expect(await findings(container)).toEqual([]);
  await press('Draw the days and begin');
  await says('no days sat, 10 to come');
  const drawn = desk.drafts[0];
  expect(drawn).toMatchObject({
    kind: 'trialDrawn',
    child: crew.juniper.id,
    set: 'divide-by-9',
    plan: 'ten',
  });
  expect(trialOrders.ten).toContainEqual(drawn && 'order' in drawn ? drawn.order : null);
  expect(section.textContent).not.toContain('Draw the days');
  expect(document.activeElement).toBe(title);
  const sheet = desk.days.value.get(crew.juniper.id)?.steps.find(({ what }) => what === 'sheet');
  expect(sheet && 'plan' in sheet ? sheet.plan.trial : null).toMatchObject({ day: 0 });
});

test('stopped, it only describes; taken back at once it goes on', async () => {
  const { desk, says, press } = await trialOf(boatDesk(), 'Juniper');
  await press('Draw the days and begin');
  await says('no days sat');
  await press('Stop the trial');
  await says('The trial was stopped');
  expect(desk.drafts.at(-1)).toMatchObject({ kind: 'trialStopped', child: crew.juniper.id });
  await press('Go on with it');
  await says('The trial goes on');
});

test('it needs a set that is accurate', async () => {
  const { section } = await trialOf(fakeDesk('2026-11-25', [...twoChildren, newSheet]), 'Wren');
  expect(section.textContent).toContain('It needs a set that is accurate');
  expect(section.textContent).toContain('There are 10 so far, 10 of them right.');
  expect(section.querySelector('button')).toBeNull();
});

const prompts = promptsOf('plus-2', 10);
const newSheet: Draft = madeSat(prompts, allRight(prompts, 2000), { child: 'wren', day: '2026-11-24' });
