import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Draft } from '../../../src/core/record/record';
import { place } from '../../../src/parent/place';
import { findings } from '../axe';
import { fakeDesk } from '../fake-desk';
import { teosSheet, twoChildren, wrensSheet } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

const away = [{ why: 'hidden', fromMs: 20_000, toMs: 25_000, afterVisits: 5 }] as const;

async function readTeos(more: readonly Draft[] = [], sheet = teosSheet()) {
  const desk = fakeDesk('2026-11-25', [...twoChildren, wrensSheet(), sheet, ...more]);
  const view = await openPages(desk, 'marking');
  await userEvent.click(await view.findByRole('button', { name: /^Teo, Wed 25 Nov 2026/ }));
  await view.findByRole('heading', { level: 1, name: 'Teo, Wednesday 25 November 2026' });
  const target = place.value.sitting;
  const press = (name: string | RegExp) => userEvent.click(view.getByRole('button', { name }));
  const band = () => view.container.textContent ?? '';
  return { ...view, desk, target, press, band };
}

const rulings = (desk: Awaited<ReturnType<typeof readTeos>>['desk']) =>
  desk.drafts.filter(({ kind }) => kind === 'ruled');

test('a sitting stands answer by answer: fact, given, outcome in words, first key and time taken', async () => {
  const { container } = await readTeos();
  const rows = [...container.querySelectorAll('table.answers tbody tr')].map((row) =>
    [...row.querySelectorAll('td, th')].map((cell) =>
      cell.textContent?.replace(/(Looks like|Perhaps a slip|Count as).*/, '').trim(),
    ),
  );
  expect(rows).toHaveLength(25);
  expect(rows[1]).toEqual(['2', '2 × 7', '14', 'right', '2.2\u00a0s', '2.8\u00a0s']);
  expect(rows[3]).toEqual(['4', '4 × 7', '99', 'wrong; the answer is 28', '2.2\u00a0s', '2.8\u00a0s']);
  expect(rows[5]?.slice(0, 4)).toEqual(['6', '6 × 7', '–', 'skipped']);
  expect(rows[16]?.[3]).toBe('right, after the bell');
  expect(rows[24]?.[3]).toBe('not reached');
  expect(container.textContent).toContain('Loose is 10 to 14 of 25 right by the bell.');
});

test('every key is shown with its time on request', async () => {
  const { getByRole, container } = await readTeos();
  expect(container.textContent).not.toContain('by touch');
  await userEvent.click(getByRole('checkbox', { name: 'Show every key' }));
  expect(container.textContent).toContain(
    '1 2.20 s by touch, 4 2.50 s by touch, done 2.80 s by touch, taken',
  );
});

test('an accepted answer counts by the bell; undo takes it back, redo brings it in again', async () => {
  const { desk, target, press, band, findByRole } = await readTeos();
  await press('Count as right: 4, 4 × 7');
  expect(rulings(desk)).toEqual([
    { kind: 'ruled', child: 'teo', target, targetDay: '2026-11-25', ruling: { what: 'accept', place: 3 } },
  ]);
  await until(() => expect(band()).toContain('Even is 15 to 19 of 25 right by the bell.'));
  await press(/^Undo: No\. 4/);
  await until(() => expect(band()).toContain('Loose is '));
  await findByRole('button', { name: /^Redo: No\. 4/ });
  await press(/^Redo: No\. 4/);
  await until(() => expect(band()).toContain('Even is '));
  expect(desk.drafts.map(({ kind }) => kind)).toEqual(['ruled', 'undone', 'undone']);
});

test('a wrong answer is called a slip or a miscalculation, the later word holding', async () => {
  const { desk, press, band } = await readTeos();
  await press('A slip: 4, 4 × 7');
  await until(() => expect(band()).toContain('wrong: a slip; the answer is 28'));
  await press('A miscalculation: 4, 4 × 7');
  await until(() => expect(band()).toContain('wrong: a miscalculation; the answer is 28'));
  expect(rulings(desk).map((draft) => 'ruling' in draft && draft.ruling)).toEqual([
    { what: 'slip', place: 3, slip: true },
    { what: 'slip', place: 3, slip: false },
  ]);
});

test('the whole sitting is voided, or somebody helped, and says so', async () => {
  const { press, band } = await readTeos();
  await press('Somebody helped');
  await until(() => expect(band()).toContain('You ruled that somebody helped'));
  await press('Does not count');
  await until(() => expect(band()).toContain('You ruled that it does not count.'));
});

test('an interrupted sitting has no band until the parent gives it one', async () => {
  const { press, band } = await readTeos([], teosSheet({ away }));
  expect(band()).toContain('It was interrupted, so it has no band unless you give it one.');
  await press('Give it its band');
  await until(() => expect(band()).toContain('Loose is '));
});

test('a sitting of the wrong child is moved, and moved back by undo', async () => {
  const { desk, target, press, findByRole, getByLabelText } = await readTeos();
  await userEvent.selectOptions(getByLabelText('Another child sat it:'), 'Wren');
  await press('Move it');
  await findByRole('heading', { level: 1, name: 'Wren, Wednesday 25 November 2026' });
  expect(rulings(desk)).toEqual([
    {
      kind: 'ruled',
      child: 'teo',
      target,
      targetDay: '2026-11-25',
      ruling: { what: 'wrongChild', child: 'wren' },
    },
  ]);
  await press(/^Undo: It was Wren/);
  await findByRole('heading', { level: 1, name: 'Teo, Wednesday 25 November 2026' });
});

test('rows are sent, changed and waived, each by a ruling', async () => {
  const { desk, press, band } = await readTeos();
  expect(band()).toContain('By Settings, Loose brings one extra row.');
  await press('Send two rows');
  await until(() => expect(band()).toContain('You sent two rows.'));
  await press('No rows');
  await until(() => expect(band()).toContain('You sent no rows.'));
  expect(rulings(desk).map((draft) => 'ruling' in draft && draft.ruling)).toEqual([
    { what: 'rows', rows: 2 },
    { what: 'rows', rows: 0 },
  ]);
});

test('extra rows and corrections stand below their sheet', async () => {
  const desk = fakeDesk('2026-11-25', [...twoChildren, teosSheet()]);
  const [sheet] = desk.records().filter(({ kind }) => kind === 'sat');
  await desk.record([teosSheet({ purpose: 'row', of: sheet?.id ?? '', clock: null })]);
  const view = await openPages(desk, 'marking');
  expect(await view.findAllByRole('button', { name: /^Teo, Wed/ })).toHaveLength(1);
  await userEvent.click(view.getByRole('button', { name: /^Teo, Wed/ }));
  await view.findByRole('heading', { level: 2, name: 'Extra row 1' });
});

test('an untimed sheet’s first 45 s are a sentence', async () => {
  const desk = fakeDesk('2026-11-25', [...twoChildren, wrensSheet()]);
  const view = await openPages(desk, 'marking');
  await userEvent.click(await view.findByRole('button', { name: /^Wren, Wed/ }));
  await view.findByText(
    /Nine were right in the first 45 s; counted like a sheet with the clock, that is Firm\./,
  );
});

test('a ruling that can’t be stored is told, and nothing changes', async () => {
  const { desk, press, band } = await readTeos();
  desk.refuse('full');
  await press('Does not count');
  await until(() => expect(band()).toContain('no room left'));
  expect(rulings(desk)).toEqual([]);
});

test('axe finds nothing on a sitting with keys and decisions', async () => {
  const { press, getByRole, container, findByRole } = await readTeos();
  await press('A slip: 4, 4 × 7');
  await press('Does not count');
  await press(/^Undo: The sitting/);
  await findByRole('button', { name: /^Redo: The sitting/ });
  await userEvent.click(getByRole('checkbox', { name: 'Show every key' }));
  expect(await findings(container)).toEqual([]);
});

test('the sheet speaks first, each sentence with what it rests on a tap away', async () => {
  const { container, findAllByRole } = await readTeos();
  const [ask] = await findAllByRole('button', { name: /^How do you know\?/ });
  await userEvent.click(ask as HTMLElement);
  const said = container.querySelector('.said-reading');
  await until(() => expect(said?.querySelectorAll('.how-lines:not([hidden]) p')).toHaveLength(2));
  expect(said?.textContent).toContain('14 right by the bell');
  const table = container.querySelector('table.answers');
  expect(
    said && table && said.compareDocumentPosition(table) & Node.DOCUMENT_POSITION_FOLLOWING,
  ).toBeTruthy();
  expect(await findings(container)).toEqual([]);
});

test('a cause stands beside each wrong answer, and a slip is proposed as a slip', async () => {
  const wrong = (gave: string) => {
    const sheet = teosSheet();
    const visits = sheet.visits.map((visit) => (visit.place === 3 ? { ...visit, given: gave } : visit));
    return readTeos([], { ...sheet, visits });
  };
  const { band } = await wrong('21');
  expect(band()).toContain('Looks like: the answer to 3 × 7.');
  const slip = await wrong('82');
  expect(slip.band()).toContain('Perhaps a slip, not a miscalculation: the right digits, turned round.');
  await slip.press('A slip: 4, 4 × 7');
  await until(() => expect(slip.band()).toContain('wrong: a slip'));
  expect(slip.band()).toContain('Looks like: the right digits, turned round.');
});

test('after a ruling on an answer the focus is on that row’s Undo, which takes it back', async () => {
  const { press, band, container } = await readTeos();
  await press('Count as right: 4, 4 × 7');
  await until(() => expect(document.activeElement?.getAttribute('aria-label')).toBe('Undo: 4, 4 × 7'));
  expect(document.activeElement?.closest('tr')?.textContent).toContain('right by your ruling');
  await userEvent.keyboard('{Enter}');
  await until(() => expect(band()).toContain('Loose is '));
  await until(() => expect(container.querySelector('tr:focus-within')?.textContent).toContain('4 × 7'));
});

test('after a ruling on the whole the focus is on its Undo', async () => {
  const { press } = await readTeos();
  await press('Does not count');
  await until(() =>
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Undo: The sitting does not count.'),
  );
});

test('what needs the parent stands first, the rest by day with the newest first, of one child on request', async () => {
  const old = teosSheet({ away, day: '2026-11-10' });
  const desk = fakeDesk('2026-11-25', [
    ...twoChildren,
    old,
    wrensSheet({ day: '2026-11-23' }),
    wrensSheet({ day: '2026-11-24' }),
    teosSheet({ day: '2026-11-24', away }),
    teosSheet(),
  ]);
  const { findByRole, container, getByLabelText } = await openPages(desk, 'marking');
  await findByRole('heading', { level: 2, name: 'What needs you' });
  const waiting = [...container.querySelectorAll('.card li')].map(({ textContent }) => textContent);
  expect(waiting.some((text) => text?.includes('Teo, Tue 24 Nov 2026'))).toBe(true);
  // Three weeks ago it was left without a band, and nobody asks again.
  expect(waiting.some((text) => text?.includes('10 Nov'))).toBe(false);
  const days = () => [...container.querySelectorAll('h2.day')].map(({ textContent }) => textContent);
  const all = days();
  expect(all.at(-1)).toBe('Tuesday 10 November 2026');
  expect(all.indexOf('Tuesday 24 November 2026')).toBeLessThan(all.indexOf('Monday 23 November 2026'));
  await userEvent.selectOptions(getByLabelText('Child'), 'Wren');
  await until(() => expect(days()).toEqual(['Tuesday 24 November 2026', 'Monday 23 November 2026']));
  expect(await findings(container)).toEqual([]);
});

test('a sheet of a spread, which has no set, is read like any other', async () => {
  const sheet = wrensSheet({ set: null, spread: { spread: 'asked', part: 0 } });
  const desk = fakeDesk('2026-11-25', [...twoChildren, sheet]);
  const view = await openPages(desk, 'marking');
  await userEvent.click(await view.findByRole('button', { name: /^Wren, Wed/ }));
  await view.findByText(/^Sheet with a few facts from every set\. Ten facts, without a clock/);
});
