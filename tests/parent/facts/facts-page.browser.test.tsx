import { within } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { markSat } from '../../../src/core/marking/mark-sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { place } from '../../../src/parent/place';
import { findings } from '../axe';
import { boatDesk, crew } from '../boat-desk';
import { type FakeDesk, fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

/** The parent's acceptance of Teo's last wrong answer on a sheet, and its fact. */
function lastWrongOf(desk: FakeDesk) {
  const sittings = desk.history.value?.children.get(crew.teo.id)?.sittings ?? [];
  for (const { sat, rulings } of sittings.toReversed()) {
    if (sat.purpose !== 'sheet') continue;
    const { places } = markSat(sat, rulings, defaultChildSettings.limits);
    const wrong = places.find(({ outcome }) => outcome === 'wrong');
    if (!wrong) continue;
    const ruling = {
      kind: 'ruled',
      child: crew.teo.id,
      target: sat.id,
      targetDay: sat.day,
      ruling: { what: 'accept', place: wrong.place },
    } as const;
    return { ruling, fact: wrong.prompt };
  }
  throw new Error('Teo is never wrong');
}

async function factsOf(child: string) {
  const view = await openPages(boatDesk(), 'facts');
  (await view.findByRole('button', { name: child })).click();
  await view.findAllByRole('grid');
  return view;
}

test('sentences stand first, then the grid, then the same as a table', async () => {
  const { getByRole } = await factsOf('Juniper');
  const section = getByRole('region', { name: 'Division' });
  const parts = [...section.querySelectorAll('h2, .said-reading, [role="grid"], details')];
  expect(parts.map(({ tagName }) => tagName)).toEqual(['H2', 'DIV', 'TABLE', 'DETAILS']);
  expect(section.textContent).toMatch(/Of \d+ facts: \d+ quick/);
});

test('the first sentence is a total over all operations', async () => {
  const { container } = await factsOf('Juniper');
  const first = container.querySelector('.said-reading p')?.textContent ?? '';
  expect(first).toMatch(/^In all \d+ of \d+ facts met so far are known, (\d+|all) of them quickly[;.]/);
  const [known = 0, met = 0] = [...first.matchAll(/\d+/g)].map(([number]) => Number(number));
  expect(met).toBe(container.querySelectorAll('.state-grid [data-met="true"]').length);
  const words = [...container.querySelectorAll('.state-grid .word')].map(({ textContent }) => textContent);
  expect(known).toBe(words.filter((word) => word === 'quick' || word === 'slow').length);
});

test('an answer that the parent accepted is right by the parent’s ruling in the fact’s history', async () => {
  const desk = boatDesk();
  const { ruling, fact } = lastWrongOf(desk);
  await desk.record([ruling]);
  const view = await openPages(desk, 'facts');
  await userEvent.click(await view.findByRole('button', { name: 'Teo' }));
  await until(() => expect(view.container.querySelector(`[data-fact="${fact}"]`)).not.toBeNull());
  await userEvent.click(view.container.querySelector(`[data-fact="${fact}"]`) as HTMLElement);
  await view.findByText('right by your ruling');
});

test('every fact is told by a shape and a word, and says so; no two states have one shape', async () => {
  const { container } = await factsOf('Teo');
  const shapes = new Map<string, string>();
  const cells = [...container.querySelectorAll<HTMLElement>('.state-grid button[data-met="true"]')];
  expect(cells.length).toBeGreaterThan(40);
  for (const cell of cells) {
    const says = cell.getAttribute('aria-label') ?? '';
    expect(says).toMatch(
      / = \d+, (quick|slow|uneven|to learn|too few answers|too few days|right so far|can’t tell yet)/,
    );
    const state = says.split(', ')[1] ?? '';
    const shape = cell.querySelector('svg')?.innerHTML ?? '';
    expect(shape).not.toBe('');
    expect(shapes.get(state) ?? shape).toBe(shape);
    shapes.set(state, shape);
  }
  const key = [...container.querySelectorAll('.state-key li')].map(
    (line) => line.querySelector('svg')?.innerHTML,
  );
  expect(new Set(key).size).toBe(5);
});

test('the key counts the facts of each word, so that a grid without words can be read', async () => {
  const { container } = await factsOf('Teo');
  const words = [...container.querySelectorAll('.state-grid .word')].map(({ textContent }) => textContent);
  const lines = [...container.querySelectorAll('.state-key li')].map(({ textContent }) => textContent ?? '');
  const counts = lines.map((line) => /^ ?(.+?) \((\d+)\): /.exec(line)?.slice(1) ?? []);
  expect(counts.slice(0, 5).reduce((sum, [, many]) => sum + Number(many), 0)).toBe(words.length);
  for (const [name, many] of counts.filter(([one]) => one !== 'no word yet'))
    expect(words.filter((word) => word === name).length, name).toBe(Number(many));
});

test('facts never met are marked by a word, ties and facts with 0 or 1 apart', async () => {
  const { getByRole } = await factsOf('Juniper');
  const grid = within(getByRole('grid'));
  grid.getByRole('button', { name: '49: 49 ÷ 7 = 7, never met yet, same numbers' });
  grid.getByRole('button', { name: /^0: 0 ÷ 9 = 0, never met yet, with 0 or 1$/ });
  expect(getByRole('region', { name: 'Division' }).textContent).toMatch(
    /Facts with the same number twice, counted apart: \d+ of the \d+ met so far quick and right/,
  );
});

test('by keyboard alone: arrows to a fact, Enter for its answers, Close back to where one was', async () => {
  const { container, findByRole, getByRole } = await factsOf('Teo');
  const first = container.querySelector<HTMLElement>('.state-grid [tabindex="0"]');
  first?.focus();
  await userEvent.keyboard('{PageDown}{End}{ArrowLeft}');
  const at = document.activeElement as HTMLElement;
  expect(at.dataset['fact']).toBe('mul-9-8');
  await userEvent.keyboard('{ArrowUp}{ArrowUp}{Enter}');
  const history = await findByRole('region', { name: '7 × 8 = 56' });
  await until(() => expect(document.activeElement?.textContent).toBe('7 × 8 = 56'));
  expect(place.value.fact).toBe('mul-7-8');
  expect(history.querySelectorAll('tbody tr').length).toBeGreaterThan(10);
  await userEvent.click(within(history).getByRole('button', { name: 'Close' }));
  await until(() => expect((document.activeElement as HTMLElement).dataset['fact']).toBe('mul-7-8'));
  expect(getByRole('button', { name: /: 7 × 8 = 56/ }).getAttribute('aria-pressed')).toBe('false');
});

test('a fact opens to its answers: day, given, think time, clock, and a cause beside each wrong one', async () => {
  const { container, findByRole } = await factsOf('Teo');
  await userEvent.click(container.querySelector('[data-fact="mul-7-8"]') as HTMLElement);
  const history = await findByRole('region', { name: '7 × 8 = 56' });
  const rows = [...history.querySelectorAll('tbody tr')].map((row) =>
    [...row.querySelectorAll('th, td')].map((cell) => cell.textContent ?? ''),
  );
  for (const [day, given, outcome, think, clock, cause] of rows) {
    expect(day).toMatch(/^\w{3} \d{1,2} \w{3} 2026/);
    expect(think).toMatch(/^(\d+\.\d\u00a0s|–)/);
    expect(clock).toMatch(/^with(out)?$/);
    if (outcome?.startsWith('wrong')) expect(cause).not.toBe('');
    else expect(cause).toBe('');
    expect(given).not.toBe(outcome === 'right' ? undefined : '56');
  }
  expect(rows.some(([, , outcome]) => outcome?.startsWith('wrong'))).toBe(true);
  await userEvent.click(within(history).getAllByRole('button', { name: /2026$/ })[0] as HTMLElement);
  await findByRole('heading', { level: 1, name: /^Teo, / });
});

test('each number can be asked how it is known, and answers in two lines', async () => {
  const { container, getAllByRole } = await factsOf('Wren');
  const asks = getAllByRole('button', { name: /^How do you know\?/ });
  expect(asks.length).toBeGreaterThan(1);
  const lines = container.querySelector<HTMLElement>('.how-lines');
  expect(lines?.hidden).toBe(true);
  await userEvent.click(asks[0] as HTMLElement);
  await until(() => expect(lines?.hidden).toBe(false));
  expect(lines?.querySelectorAll('p')).toHaveLength(2);
});

test('nothing is wrong with it to axe, a fact open or not', async () => {
  for (const child of ['Wren', 'Teo', 'Juniper']) {
    const { container } = await factsOf(child);
    expect(await findings(container)).toEqual([]);
    await userEvent.click(container.querySelector('[data-met="true"]') as HTMLElement);
    await until(() => expect(container.querySelector('.fact-history')).not.toBeNull());
    expect(await findings(container)).toEqual([]);
  }
});

test('before the first answer it says that there is none', async () => {
  const { findByText } = await openPages(fakeDesk('2026-11-25', twoChildren), 'facts');
  await findByText('No fact has been answered yet.');
});

test('the parent’s own line for a fact is kept, shown, and given up for the tool’s again', async () => {
  const desk = boatDesk();
  const { findByRole, findByLabelText, findByText, container } = await openPages(desk, 'facts');
  await userEvent.click(await findByRole('button', { name: 'Teo' }));
  await until(() => expect(container.querySelector('[data-fact="mul-7-8"]')).not.toBeNull());
  await userEvent.click(container.querySelector('[data-fact="mul-7-8"]') as HTMLElement);
  await findByText(/^The tool’s line: “/);
  await userEvent.click(await findByRole('button', { name: 'Keep this line' }));
  await findByText('Write a line first, or use the tool’s.');
  await userEvent.fill(await findByLabelText('Your own line for it'), '5, 6, 7, 8: 56 is 7 × 8');
  await userEvent.keyboard('{Enter}');
  await findByText('Kept: “5, 6, 7, 8: 56 is 7 × 8”');
  expect(desk.household.value.lines.get('mul-7-8')).toBe('5, 6, 7, 8: 56 is 7 × 8');
  expect(await findings(container.querySelector('.fact-history') ?? container)).toEqual([]);
  await userEvent.click(await findByRole('button', { name: 'Use the tool’s line again' }));
  await until(() => expect(desk.household.value.lines.has('mul-7-8')).toBe(false));
});
