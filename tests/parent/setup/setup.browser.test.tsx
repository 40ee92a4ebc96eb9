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
  // Two cells, then the whole column + 2.
  expect(ticked.size).toBe(12);
  for (const fact of ['add-0-0', 'add-0-1', 'add-0-2', 'add-9-2'])
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
    await userEvent.click(getByRole('button', { name: 'Nothing yet' }));
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

test('a child without a name and a full disk are told plainly, and what was typed stays', async () => {
  const { desk, gate, step, getByLabelText, findByText } = await begin();
  await step('Before you begin');
  await gate.prepare('2468').keep();
  setupStep.value = { at: 'child' };
  await step('A child');
  await userEvent.fill(getByLabelText('Name'), ' ');
  await userEvent.keyboard('{Enter}');
  await findByText('Every child needs a name.');
  desk.refuse('full');
  await userEvent.fill(getByLabelText('Name'), 'Wren');
  await userEvent.keyboard('{Enter}');
  await findByText(/no room left/);
  expect((getByLabelText('Name') as HTMLInputElement).value).toBe('Wren');
  desk.refuse(null);
  await userEvent.keyboard('{Enter}');
  await step('What is known already?');
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
