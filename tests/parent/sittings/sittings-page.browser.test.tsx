import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { place } from '../../../src/parent/place';
import { fakeDesk } from '../fake-desk';
import { teosSheet, twoChildren, wrensSheet } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

async function log() {
  const desk = fakeDesk('2026-11-25', [...twoChildren, wrensSheet({ day: '2026-11-24' }), teosSheet()]);
  const view = await openPages(desk, 'sittings');
  await view.findByRole('heading', { level: 1, name: 'Sittings' });
  const rows = () =>
    [...view.container.querySelectorAll('tbody tr')].map((row) =>
      [...row.querySelectorAll('td, th')].map((cell) => cell.textContent),
    );
  return { ...view, desk, rows };
}

test('every sitting stands with its day, set, clock, count, band and time', async () => {
  const { rows } = await log();
  expect(rows()).toEqual([
    ['Wed 25 Nov 2026', 'Teo', 'Sheet', 'Times 7', '45\u00a0s', '14 of 25 by the bell', 'Loose', '46\u00a0s'],
    ['Tue 24 Nov 2026', 'Wren', 'Sheet', 'Plus 2', 'none', '9 of 10', '–', '40\u00a0s'],
  ]);
});

test('one child’s sittings are shown alone', async () => {
  const { rows, getByLabelText } = await log();
  await userEvent.selectOptions(getByLabelText('Child'), 'Wren');
  await until(() => expect(rows().map((row) => row[1])).toEqual(['Wren']));
});

test('a voided sitting stays in the log and says that it does not count', async () => {
  const { desk, rows } = await log();
  const [target] = desk.records().filter(({ kind }) => kind === 'sat');
  await desk.record([
    {
      kind: 'ruled',
      child: 'wren',
      target: target?.id ?? '',
      targetDay: '2026-11-24',
      ruling: { what: 'void' },
    },
  ]);
  await until(() => expect(rows()[1]?.[6]).toBe('does not count'));
});

test('a sitting leads to its marking', async () => {
  const { getAllByRole } = await log();
  const [first] = getAllByRole('button', { name: 'Sheet' });
  if (first) await userEvent.click(first);
  expect(place.value.page).toBe('marking');
  expect(place.value.sitting).not.toBeNull();
});
