import { fireEvent } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import { codeOf } from '../../../src/core/paper/paper-code';
import type { SheetPrinted } from '../../../src/core/record/household-record';
import { turnToPart } from '../../../src/parent/paper/paper-place';
// Fetched when it is turned to; here it is there before, however busy the machine.
import '../../../src/parent/paper/paper-page';
import { findings } from '../axe';
import { type FakeDesk, fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

beforeEach(() => {
  turnToPart('result');
  // The print window would wait for a person.
  window.print = () => undefined;
});

async function paper(desk: FakeDesk = fakeDesk('2026-11-25', twoChildren)) {
  const view = await openPages(desk, 'paper');
  await view.findByRole('heading', { level: 1, name: 'Paper' });
  const button = (name: string | RegExp) => view.findByRole('button', { name });
  return { ...view, desk, press: async (name: string | RegExp) => fireEvent.click(await button(name)) };
}

function printed(desk: FakeDesk): readonly SheetPrinted[] {
  return desk.records().filter((record): record is SheetPrinted => record.kind === 'sheetPrinted');
}

test('printing writes the sheets down once, and again prints the same ones without another record', async () => {
  const { desk, press, container, findByText } = await paper();
  await press('Print');
  await press('Print two sheets');
  await findByText(/^The two sheets are written down/);
  expect(printed(desk)).toHaveLength(2);
  const codes = () => [...container.querySelectorAll('.a-sheet .paper-code')].map((one) => one.textContent);
  expect(codes()).toEqual(printed(desk).map(codeOf));
  await press('Print these again');
  expect(printed(desk)).toHaveLength(2);
  await press('Undo');
  await until(() => expect(desk.drafts.filter(({ kind }) => kind === 'undone')).toHaveLength(2));
});

test('every part passes axe, and nothing on paper is told by colour', async () => {
  const { press, container, desk, findByLabelText } = await paper();
  expect(await findings(container)).toEqual([]);
  await press('Print');
  for (const what of ['Sheets', 'Flash cards', 'Gap lines and stories', 'The fact grid', 'The long cloth']) {
    fireEvent.click(await findByLabelText(what));
    expect(await findings(container)).toEqual([]);
  }
  fireEvent.click(await findByLabelText('Sheets'));
  await press('Print two sheets');
  await press('Enter a result');
  const [sheet] = printed(desk);
  if (!sheet) throw new Error('nothing printed');
  await press(new RegExp(`^Wren.*${codeOf(sheet)}`));
  await until(() => expect(container.querySelector('.mark-grid')).not.toBeNull());
  fireEvent.click(container.querySelector('[data-place="2"]') as HTMLElement);
  expect(container.querySelector('[data-place="2"]')?.textContent).toMatch(/wrong$/);
  expect(await findings(container)).toEqual([]);
  await press('Another sheet');
  await press('Run the clock');
  expect(await findings(container)).toEqual([]);
});

test('a result half read off is still there after the pages were locked', async () => {
  const first = await paper();
  await first.press('Print');
  await first.press('Print two sheets');
  await first.press('Enter a result');
  const [sheet] = printed(first.desk);
  if (!sheet) throw new Error('nothing printed');
  await first.press(new RegExp(`^Wren.*${codeOf(sheet)}`));
  fireEvent.click(first.container.querySelector('[data-place="4"]') as HTMLElement);
  const again = await paper(first.desk);
  await until(() =>
    expect(again.container.querySelector('[data-place="4"]')?.getAttribute('data-is')).toBe('wrong'),
  );
  await again.press('Keep this result');
  await again.findByText(/^Kept\. 9 of 10 right, without a clock\. One wrong\./);
  await until(() => expect(document.activeElement?.closest('.kept')).not.toBeNull());
  expect(again.desk.drafts.at(-1)).toMatchObject({
    kind: 'sat',
    paper: true,
    child: 'wren',
    day: '2026-11-25',
  });
});

test('a second sheet of a day says so and has no band', async () => {
  const desk = fakeDesk('2026-11-25', twoChildren);
  const { press, findByText, container } = await paper(desk);
  for (const nth of [0, 1]) {
    await press('Print');
    await press('Print two sheets');
    await press('Enter a result');
    const sheet = printed(desk).filter(({ child }) => child === 'teo')[nth];
    if (!sheet) throw new Error('nothing printed');
    await press(new RegExp(`^Teo.*${codeOf(sheet)}`));
    await until(() => expect(container.querySelector('.mark-grid')).not.toBeNull());
    if (nth === 1) await findByText(/this one is kept as a second/);
    await press('All 25');
    await press('Keep this result');
    await until(() => expect(container.querySelector('.enter')).toBeNull());
  }
  const sats = desk.records().filter(({ kind }) => kind === 'sat');
  expect(sats.map((sat) => sat.kind === 'sat' && sat.second)).toEqual([undefined, true]);
});
