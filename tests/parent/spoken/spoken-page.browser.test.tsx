import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Draft } from '../../../src/core/record/record';
import { place } from '../../../src/parent/place';
import { findings } from '../axe';
import { fakeDesk } from '../fake-desk';
import { twoChildren, wrensSheet } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

/** Two sheets finished, and a spoken check wanted with every second. */
const twoSheets: readonly Draft[] = [
  ...twoChildren,
  { kind: 'childSettingsChanged', child: 'wren', changes: { spokenEvery: 2 } },
  wrensSheet({ day: '2026-11-23', lookBack: true, set: null }),
  wrensSheet({ day: '2026-11-24', lookBack: true, set: null }),
];

async function spoken() {
  const desk = fakeDesk('2026-11-25', twoSheets);
  const view = await openPages(desk);
  await userEvent.click(await view.findByRole('button', { name: 'Open the spoken check' }));
  await view.findByRole('heading', { level: 1, name: 'Spoken check: Wren' });
  const facts = () => [...view.container.querySelectorAll('.spoken-fact')];
  return { ...view, desk, facts };
}

test('each fact stands large to be read aloud, with why it was chosen and nothing given away', async () => {
  const { facts, container } = await spoken();
  expect(place.value).toMatchObject({ page: 'spoken', child: 'wren' });
  expect(facts().length).toBeGreaterThanOrEqual(2);
  expect(facts().length).toBeLessThanOrEqual(5);
  for (const fact of facts()) {
    expect(fact.textContent).not.toContain('=');
    expect(fact.querySelector('.hint')?.textContent).toMatch(/right at first try|wrong or skipped/i);
  }
  expect(container.textContent).toContain('were wrong or skipped');
  expect(await findings(container)).toEqual([]);
});

test('a check is marked and kept by keyboard alone, and taken back by keyboard too', async () => {
  const { facts, desk, findByText, findByRole } = await spoken();
  const many = facts().length;
  await until(() => expect(document.activeElement?.tagName).toBe('H1'));
  for (let fact = 0; fact < many; fact += 1) {
    await userEvent.keyboard('{Tab}');
    await userEvent.keyboard(fact === 0 ? '{ArrowDown}' : ' ');
  }
  // The answers stand behind a title of their own.
  await userEvent.keyboard('{Tab}{Tab}{Enter}');
  await findByText('The spoken check is kept.');
  const [record] = desk.drafts;
  expect(record).toMatchObject({ kind: 'spokenChecked', child: 'wren', day: '2026-11-25' });
  if (record?.kind !== 'spokenChecked') throw new Error('nothing heard');
  expect(record.answers.map(({ came }) => came)).toEqual(['helped', ...Array(many - 1).fill('right')]);
  await findByRole('heading', { level: 2, name: 'Heard today' });
  expect(desk.days.value.get('wren')?.needs.some(({ what }) => what === 'spokenCheck')).toBe(false);
  await until(() => expect(document.activeElement?.closest('.kept')).not.toBeNull());
  await userEvent.keyboard('{Tab}{Enter}');
  await until(() => expect(facts()).toHaveLength(many));
});

test('a check half marked is not kept, and says what is missing', async () => {
  const { facts, desk, findByText, getAllByLabelText, getByRole } = await spoken();
  await userEvent.click(getAllByLabelText('not yet')[0] as HTMLElement);
  await userEvent.click(getByRole('button', { name: 'Keep this check' }));
  await findByText(/not marked yet\.$/);
  expect(desk.drafts).toEqual([]);
  expect(facts()[0]?.querySelector<HTMLInputElement>('input:checked')).not.toBeNull();
});

test('where no check waits the page says so', async () => {
  const view = await openPages(fakeDesk('2026-11-25', twoChildren), 'spoken');
  await view.findByText(/^No spoken check waits\./);
});
