import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { setupStep } from '../../../src/parent/setup/progress';
import { findings } from '../axe';
import { fakeDesk } from '../fake-desk';
import { openPages, testGate } from '../open-pages';
import { until } from '../until';

async function begin() {
  const gate = await testGate(false);
  const desk = fakeDesk('2026-11-25');
  const view = await openPages(desk, 'today', gate);
  const step = (name: string) => view.findByRole('heading', { level: 1, name });
  return { ...view, gate, desk, step };
}

/** Tabs on until the focus is on something whose name begins so. */
async function tabTo(name: string) {
  for (let tries = 0; tries < 40; tries += 1) {
    await userEvent.keyboard('{Tab}');
    const at = document.activeElement;
    const named =
      at?.getAttribute('aria-label') ?? at?.closest('label')?.textContent ?? at?.textContent ?? '';
    const label = at?.id ? document.querySelector(`label[for="${at.id}"]`)?.textContent : null;
    if ((label ?? named).trim().startsWith(name)) return;
  }
  throw new Error(`No way by tab to ${name}`);
}

test('set-up is done to its end by keyboard alone, axe finding nothing on any step', async () => {
  const { desk, gate, step, container } = await begin();
  const clean = async () => expect(await findings(container)).toEqual([]);
  const goOn = async (name = 'Go on') => {
    await tabTo(name);
    await userEvent.keyboard('{Enter}');
  };

  await step('Before you begin');
  await clean();
  await goOn();

  await step('Choose a PIN');
  await clean();
  await tabTo('New PIN');
  await userEvent.keyboard('2468');
  await tabTo('The same PIN again');
  await userEvent.keyboard('2468{Enter}');

  await step('Write this down');
  await clean();
  expect(container.querySelector('.code-shown')?.textContent).toMatch(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/);
  expect(gate.phase.value).toBe('unset');
  await goOn();
  expect(container.textContent).toContain('Write the code down first');
  await userEvent.keyboard('{Shift>}{Tab}{/Shift} ');
  await goOn();

  await step('A child');
  await clean();
  await tabTo('Name');
  await userEvent.keyboard('Wren');
  await tabTo('Draw another edge');
  await userEvent.keyboard('{Enter}');
  await goOn();

  await step('What is known already?');
  await clean();
  await tabTo('0 + 0');
  await userEvent.keyboard(' {ArrowRight} {ArrowUp}{ArrowRight} ');
  await goOn();

  await step('The first set');
  await clean();
  await goOn('Start with “Plus 0 and 1”');

  await step('Wren can begin');
  await clean();
  await goOn('Hand over to Wren');

  expect(desk.handedTo).toHaveLength(1);
  expect(gate.phase.value).toBe('locked');
  const [wren] = desk.household.value.children;
  expect(wren).toMatchObject({ name: 'Wren', edge: 1, currentSet: 'plus-0-and-1' });
  expect(desk.handedTo).toEqual([wren?.id]);
  const ticked = wren?.ticked ?? new Set();
  // Two cells, then the whole column + 2, each with its other way round.
  expect(ticked.size).toBe(22);
  for (const fact of ['add-0-0', 'add-0-1', 'add-1-0', 'add-0-2', 'add-9-2', 'add-2-9'])
    expect(ticked.has(fact as never)).toBe(true);
  expect(await gate.tryPin('2468')).toBe('opened');
});

test('a second child is added right there, under another name', async () => {
  const { desk, step, getByLabelText, getByRole, findByText, gate } = await begin();
  await step('Before you begin');
  await gate.prepare('2468').keep();
  setupStep.value = { at: 'child' };
  for (const name of ['Wren', 'Teo']) {
    await step('A child');
    if (name === 'Teo') {
      await userEvent.keyboard('{Tab}');
      await userEvent.fill(getByLabelText('Name'), 'wren');
      await userEvent.keyboard('{Enter}');
      await findByText(/There is a child with this name already/);
    }
    await userEvent.fill(getByLabelText('Name'), name);
    await userEvent.keyboard('{Enter}');
    await step('What is known already?');
    await userEvent.click(getByRole('button', { name: 'Go on' }));
    await step('The first set');
    await userEvent.click(getByRole('radio', { name: /^Doubles/ }));
    await userEvent.click(getByRole('button', { name: 'Start with “Doubles”' }));
    await step(`${name} can begin`);
    if (name === 'Wren') await userEvent.click(getByRole('button', { name: 'Add another child' }));
  }
  await userEvent.click(getByRole('button', { name: 'Go to the parent’s pages' }));
  await until(() => expect(document.querySelector('h1')?.textContent).toMatch(/^Today/));
  expect(desk.household.value.children.map(({ name, currentSet }) => [name, currentSet])).toEqual([
    ['Wren', 'doubles'],
    ['Teo', 'doubles'],
  ]);
});

/** From the child's name on, with a PIN already. */
async function beginWithChild(desk = fakeDesk('2026-11-25')) {
  const view = await openPages(desk, 'today', await testGate());
  const step = (name: string) => view.findByRole('heading', { level: 1, name });
  const press = async (name: string) => userEvent.click(await view.findByRole('button', { name }));
  await step('A child');
  await userEvent.fill(view.getByLabelText('Name'), 'Wren');
  await press('Go on');
  await step('What is known already?');
  return { ...view, desk, step, press };
}

test('a child without a name and a full disk are told plainly, and what was typed stays', async () => {
  const { desk, step, press, getByLabelText, findByText } = await beginWithChild();
  await press('Back');
  await userEvent.fill(getByLabelText('Name'), ' ');
  await userEvent.keyboard('{Enter}');
  await findByText('Every child needs a name.');
  await until(() => expect(document.activeElement).toBe(getByLabelText('Name')));
  await userEvent.fill(getByLabelText('Name'), 'Wren');
  await userEvent.keyboard('{Enter}');
  await press('Go on');
  desk.refuse('full');
  await press('Start with “Plus 0 and 1”');
  await findByText(/no room left/);
  desk.refuse(null);
  await press('Start with “Plus 0 and 1”');
  await step('Wren can begin');
});

test('nothing of a child is recorded before its last step, and then all at once', async () => {
  const { desk, step, press, findByRole } = await beginWithChild();
  await userEvent.click(await findByRole('button', { name: '2 + 3 = 5, not known' }));
  await press('Go on');
  await step('The first set');
  expect(desk.drafts).toEqual([]);
  await press('Start with “Plus 0 and 1”');
  await step('Wren can begin');
  expect(desk.drafts.map(({ kind }) => kind)).toEqual(['childAdded', 'factsTicked', 'setStarted']);
});

test('each step goes back to the one before with what was chosen, the last one taking the child back', async () => {
  const { desk, step, press, findByRole, getByLabelText } = await beginWithChild();
  await userEvent.click(await findByRole('button', { name: '2 + 3 = 5, not known' }));
  await press('Back');
  await step('A child');
  expect((getByLabelText('Name') as HTMLInputElement).value).toBe('Wren');
  await press('Go on');
  await findByRole('button', { name: '3 + 2 = 5, known' });
  await press('Go on');
  await press('Start with “Plus 0 and 1”');
  await step('Wren can begin');
  await press('Back');
  await step('The first set');
  expect(desk.household.value.children).toEqual([]);
  await press('Start with “Plus 0 and 1”');
  await step('Wren can begin');
  expect(desk.household.value.children.map(({ name }) => name)).toEqual(['Wren']);
});

test('another operation brings a set of its own to begin with', async () => {
  const { desk, step, press, findByRole } = await beginWithChild();
  await press('Go on');
  await step('The first set');
  await userEvent.click(await findByRole('radio', { name: 'Multiplication' }));
  const times = await findByRole('button', { name: /^Start with “Times/ });
  expect((await findByRole('radio', { checked: true, name: /^Times/ })).isConnected).toBe(true);
  await userEvent.click(times);
  await step('Wren can begin');
  expect(desk.household.value.children[0]?.currentSet).toMatch(/^times-/);
});

test('without the other way round a cell is ticked alone', async () => {
  const { findByRole, press, desk } = await beginWithChild();
  await userEvent.click(await findByRole('checkbox', { name: /^And the other way round/ }));
  await userEvent.click(await findByRole('button', { name: '7 + 0 = 7, not known' }));
  await press('Go on');
  await press('Start with “Plus 0 and 1”');
  await until(() => expect([...(desk.household.value.children[0]?.ticked ?? [])]).toEqual(['add-7-0']));
});

test('instead of ticking, a spread is asked for, and set-up ends without a set', async () => {
  const { desk, step, press, findByRole, container } = await beginWithChild();
  await userEvent.click(await findByRole('radio', { name: /^It asks Wren a few facts/ }));
  await userEvent.click(await findByRole('checkbox', { name: 'Multiplication' }));
  expect(await findings(container)).toEqual([]);
  await press('Go on');
  await step('Wren can begin');
  expect(container.textContent).toContain('every set of addition and multiplication');
  expect(desk.household.value.children[0]).toMatchObject({
    currentSet: null,
    spread: { ops: ['add', 'mul'] },
  });
  await press('Go to the parent’s pages');
  await findByRole('heading', { level: 1, name: /^Today/ });
  await until(() =>
    expect(container.textContent).toContain('facts from every set, without the clock; day 1 of 2'),
  );
});

test('another child can be given up, and nothing of it stays', async () => {
  const desk = fakeDesk('2026-11-25', [{ kind: 'childAdded', child: 'teo', name: 'Teo', edge: 0 }]);
  const view = await openPages(desk, 'children', await testGate());
  await userEvent.click(await view.findByRole('button', { name: 'Add a child' }));
  await view.findByText('Step 1 of 4');
  await userEvent.fill(view.getByLabelText('Name'), 'Wren');
  await userEvent.click(view.getByRole('button', { name: 'Cancel' }));
  await view.findByRole('heading', { level: 1, name: 'Children and sets' });
  expect(desk.household.value.children.map(({ name }) => name)).toEqual(['Teo']);
});

test('two PINs that differ are told once, at the field, which has the focus', async () => {
  const { step, container, findByLabelText, findByRole } = await begin();
  await step('Before you begin');
  await userEvent.click(await findByRole('button', { name: 'Go on' }));
  await userEvent.fill(await findByLabelText('New PIN'), '2468');
  await userEvent.fill(await findByLabelText('The same PIN again'), '2469');
  await userEvent.keyboard('{Enter}');
  await until(() => expect(container.textContent?.split('The two PINs are not the same.')).toHaveLength(2));
  expect(document.activeElement).toBe(await findByLabelText('The same PIN again'));
});

test('locked in mid set-up, it goes on where it was', async () => {
  const { gate, step, findByLabelText, getByLabelText } = await begin();
  await step('Before you begin');
  await gate.prepare('2468').keep();
  setupStep.value = { at: 'child' };
  await step('A child');
  await userEvent.fill(getByLabelText('Name'), 'Wr');
  gate.lock();
  await userEvent.fill(await findByLabelText('PIN'), '2468');
  await userEvent.keyboard('{Enter}');
  await step('A child');
  expect((getByLabelText('Name') as HTMLInputElement).value).toBe('Wr');
});

test('where children are there but no PIN, set-up asks for the PIN alone', async () => {
  const gate = await testGate(false);
  const desk = fakeDesk('2026-11-25', [{ kind: 'childAdded', child: 'wren', name: 'Wren', edge: 0 }]);
  const view = await openPages(desk, 'today', gate);
  await userEvent.click(await view.findByRole('button', { name: 'Go on' }));
  await userEvent.fill(await view.findByLabelText('New PIN'), '2468');
  await userEvent.fill(view.getByLabelText('The same PIN again'), '2468');
  await userEvent.keyboard('{Enter}');
  await userEvent.click(await view.findByRole('checkbox', { name: 'I have written it down' }));
  await userEvent.click(view.getByRole('button', { name: 'Go on' }));
  await view.findByRole('heading', { level: 1, name: /^Today/ });
});
