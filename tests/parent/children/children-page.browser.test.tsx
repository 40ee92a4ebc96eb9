import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Draft } from '../../../src/core/record/record';
import { fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

async function children(more: readonly Draft[] = []) {
  const desk = fakeDesk('2026-11-25', [...twoChildren, ...more]);
  const view = await openPages(desk, 'children');
  await view.findByRole('heading', { level: 1, name: 'Children and sets' });
  const press = async (name: string | RegExp) => userEvent.click(await view.findByRole('button', { name }));
  const open = async (name: string) => userEvent.click(await view.findByText(name, { selector: 'summary' }));
  const child = (id: string) => desk.household.value.children.find((one) => one.id === id);
  return { ...view, desk, press, open, child };
}

test('a child with the same name is refused plainly', async () => {
  const { press, getByLabelText, findByText } = await children();
  await press('Add a child');
  await userEvent.fill(getByLabelText('Name'), 'TEO');
  await press('Go on');
  await findByText(/There is a child with this name already/);
});

test('another set is started, and the one before is kept in practice unless unticked', async () => {
  const { desk, open, press, getAllByRole, child } = await children();
  await open('Choose another set');
  const [doubles] = getAllByRole('radio', { name: /^Doubles/ });
  if (doubles) await userEvent.click(doubles);
  await press('Start “Doubles”');
  await until(() => expect(child('wren')).toMatchObject({ currentSet: 'doubles', keptSets: ['plus-2'] }));
  expect(desk.drafts).toEqual([
    { kind: 'setKept', child: 'wren', set: 'plus-2', kept: true },
    { kind: 'setStarted', child: 'wren', set: 'doubles' },
  ]);
});

test('the counterpart is one tap away', async () => {
  const { open, press, child } = await children();
  await open('Choose another set');
  await press('Start “Take away 2” instead');
  await until(() => expect(child('wren')?.currentSet).toBe('take-away-2'));
});

test('a set begun says so, keeps the focus, and is taken back in one tap', async () => {
  const { open, press, child, findByText } = await children();
  await open('Choose another set');
  await press('Start “Take away 2” instead');
  const said = await findByText(/“Take away 2” has begun\./);
  await until(() => expect(document.activeElement).toBe(said));
  await press('Undo');
  await until(() => expect(child('wren')).toMatchObject({ currentSet: 'plus-2', keptSets: [] }));
});

test('the order of sets is changed place by place, the button keeping the focus, and what is next obeys it', async () => {
  const { desk, open, press, child, findByText, findByRole } = await children();
  await findByText('Next in the usual order, after what is known: “Plus 0 and 1”.');
  await open('The order of sets');
  await press('Up: Doubles');
  await until(() => expect(child('wren')?.settings.setOrder.indexOf('doubles')).toBe(2));
  await until(() => expect(document.activeElement?.getAttribute('aria-label')).toBe('Up: Doubles'));
  await press('Up: Doubles');
  await press('Up: Doubles');
  await findByText('Next in the usual order, after what is known: “Doubles”.');
  expect((await findByRole('button', { name: 'Up: Doubles' })).getAttribute('aria-disabled')).toBe('true');
  await press('Back to the usual order');
  await findByText('Next in the usual order, after what is known: “Plus 0 and 1”.');
  expect(desk.household.value.children[0]?.settings.setOrder).toEqual([]);
});

test('a spread is asked for a child already here, and done without again', async () => {
  const { open, press, child } = await children();
  await open('Two days of a few facts from every set');
  await press('Begin with the next sheet');
  await until(() => expect(child('wren')?.spread).toMatchObject({ ops: ['add'] }));
  await press('Do without it');
  await until(() => expect(child('wren')?.spread).toBeNull());
});

test('a kept set can be let go', async () => {
  const { press, child } = await children([{ kind: 'setKept', child: 'wren', set: 'doubles', kept: true }]);
  await press('No longer keep it: Doubles');
  await until(() => expect(child('wren')?.keptSets).toEqual([]));
});

test('facts are ticked as known by cell and by row, and unticked', async () => {
  const { open, press, child } = await children();
  await open('Known already');
  await press('2 + 3 = 5, not known');
  await until(() => expect([...(child('wren')?.ticked ?? [])]).toEqual(['add-2-3', 'add-3-2']));
  await press(/^Everything with 2 first: 1 of 10/);
  // The row of 2 and its other way round, the column + 2; 2 + 2 is in both.
  await until(() => expect(child('wren')?.ticked.size).toBe(19));
  await press(/^Everything with 2 first: 10 of 10/);
  await until(() => expect(child('wren')?.ticked.size).toBe(0));
});

test('an own set without facts, with too few or without a name gets a plain sentence; then it is kept', async () => {
  const { desk, press, findByText, getByLabelText, container } = await children();
  await press('Make a set');
  await press('Keep this set');
  await findByText('A set needs a name.');
  await findByText('Pick the facts of the set on the grid.');
  await userEvent.fill(getByLabelText('Name of the set'), 'Nearly ten');
  const cell = (name: string) => {
    const found = container.querySelector<HTMLElement>(
      `form.card button[aria-label="${name}, not in the set"]`,
    );
    if (!found) throw new Error(`no cell ${name}`);
    return userEvent.click(found);
  };
  await cell('4 + 5 = 9');
  await press('Keep this set');
  await findByText(/at least 6 facts/);
  for (const name of ['5 + 4 = 9', '3 + 6 = 9', '6 + 3 = 9', '2 + 7 = 9', '7 + 2 = 9']) await cell(name);
  await press('Keep this set');
  await until(() => expect(desk.household.value.ownSets).toHaveLength(1));
  expect(desk.household.value.ownSets[0]).toMatchObject({ name: 'Nearly ten' });
  expect(desk.household.value.ownSets[0]?.facts).toHaveLength(6);
});

test('an own set is removed and brought back', async () => {
  const facts = ['add-1-1', 'add-2-2', 'add-3-3', 'add-4-4', 'add-5-5', 'add-6-6'] as const;
  const { desk, press, open } = await children([{ kind: 'setMade', set: 'own', name: 'Twos', facts }]);
  await press('Remove: Twos');
  await until(() => expect(desk.household.value.ownSets).toEqual([]));
  await open('Removed sets');
  await press('Bring back: Twos');
  await until(() => expect(desk.household.value.ownSets).toHaveLength(1));
});

test('a child is renamed, archived and brought back', async () => {
  const { open, press, child, container } = await children();
  await open('Name and woven edge');
  const name = container.querySelector<HTMLInputElement>('details[open] input[type="text"]');
  if (!name) throw new Error('no name field');
  await userEvent.fill(name, 'Wrenna');
  await press('Keep');
  await until(() => expect(child('wren')?.name).toBe('Wrenna'));
  await open('Archive or delete');
  await press('Archive Wrenna');
  await until(() => expect(child('wren')?.archived).toBe(true));
  await press('Bring Wrenna back');
  await until(() => expect(child('wren')?.archived).toBe(false));
});

test('deleting asks for the name, says what stays, asks once more, and deletes only then', async () => {
  const { desk, open, press, getByLabelText, findByText } = await children();
  await open('Archive or delete');
  await press('Delete Wren …');
  await findByText(/Files you have already saved still hold them/);
  await userEvent.fill(getByLabelText('The name, to delete for good'), 'wren');
  await press('Go on');
  await findByText(/Nothing was deleted/);
  await userEvent.fill(getByLabelText('The name, to delete for good'), 'Wren');
  await press('Go on');
  await findByText(/Really delete Wren, with 0 sittings/);
  expect(desk.household.value.children).toHaveLength(2);
  await press('Delete Wren for good');
  await until(() => expect(desk.household.value.children.map(({ id }) => id)).toEqual(['teo']));
});
