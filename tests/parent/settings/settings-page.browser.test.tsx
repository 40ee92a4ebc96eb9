import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { findings } from '../axe';
import { fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';
import { openPages, pin } from '../open-pages';
import { until } from '../until';

async function settings() {
  const desk = fakeDesk('2026-11-25', twoChildren);
  const view = await openPages(desk, 'settings');
  await view.findByRole('heading', { level: 1, name: 'Settings' });
  const wren = () => desk.household.value.children[0]?.settings;
  const field = (name: string) => view.getByLabelText(name) as HTMLInputElement;
  return { ...view, desk, wren, field };
}

test('an allowance of 0 s gets a plain sentence and stays in the field', async () => {
  const { desk, field, findByText, findByLabelText } = await settings();
  await userEvent.fill(await findByLabelText('Time allowed with the clock'), '0');
  await userEvent.keyboard('{Enter}');
  await findByText(/With 0 seconds nothing could be answered/);
  expect(field('Time allowed with the clock').value).toBe('0');
  expect(field('Time allowed with the clock').getAttribute('aria-invalid')).toBe('true');
  await until(() => expect(document.activeElement).toBe(field('Time allowed with the clock')));
  expect(desk.drafts).toEqual([]);
});

test('changed numbers are kept as one record of only what changed', async () => {
  const { desk, field, findByText } = await settings();
  await userEvent.fill(field('Length of a sheet'), '15');
  await userEvent.fill(field('Time allowed with the clock'), '60');
  await userEvent.keyboard('{Enter}');
  await findByText('Kept.');
  expect(desk.drafts).toEqual([
    { kind: 'childSettingsChanged', child: 'wren', changes: { length: 15, allowanceS: 60 } },
  ]);
});

test('numbers that can’t be stored stay in their fields through a lock', async () => {
  const { desk, gate, field, findByText, findByLabelText } = await settings();
  desk.refuse('refused');
  await userEvent.fill(field('Length of a sheet'), '20');
  await userEvent.keyboard('{Enter}');
  await findByText(/stores nothing here/);
  gate.lock();
  await userEvent.fill(await findByLabelText('PIN'), pin);
  await userEvent.keyboard('{Enter}');
  expect(((await findByLabelText('Length of a sheet')) as HTMLInputElement).value).toBe('20');
});

test('every switch is kept as soon as it is turned', async () => {
  const { wren, getByRole } = await settings();
  for (const [name, expected] of [
    ['with a clock', { timed: true }],
    ['hidden until the bell', { sight: 'hidden' }],
    ['on your word', { rowsSent: 'parent' }],
    ['one number under the other', { layout: 'stacked' }],
    ['7 8 9 at the top, as on a calculator', { keypad: 'calculator' }],
    ['on the left', { hand: 'left' }],
  ] as const) {
    await userEvent.click(getByRole('radio', { name }));
    await until(() => expect(wren()).toMatchObject(expected));
    const group = getByRole('radio', { name }).closest('fieldset');
    await until(() => expect(group?.querySelector('[role="status"]')?.textContent).toBe('Kept.'));
  }
  await userEvent.click(getByRole('checkbox', { name: /^On a timed sheet, take/ }));
  await userEvent.click(getByRole('checkbox', { name: /^Keep the times/ }));
  await until(() => expect(wren()).toMatchObject({ takesItself: false, keepTimes: false }));
});

test('bands are renamed for the household, two of the same name refused', async () => {
  const { desk, field, findAllByText, getByRole } = await settings();
  await userEvent.fill(field('Band 3'), 'even');
  await userEvent.click(getByRole('button', { name: 'Keep these names' }));
  expect(await findAllByText(/Two bands have this name/)).toHaveLength(2);
  await userEvent.fill(field('Band 3'), 'Airy');
  await userEvent.click(getByRole('button', { name: 'Keep these names' }));
  await until(() => expect(desk.household.value.settings.bandNames.loose).toBe('Airy'));
});

test('another child’s settings are that child’s alone', async () => {
  const { desk, getByRole, findByRole, field } = await settings();
  await userEvent.click(getByRole('button', { name: 'Teo' }));
  await findByRole('heading', { name: 'For Teo' });
  expect(field('Length of a sheet').value).toBe('25');
  await userEvent.click(getByRole('radio', { name: 'without a clock' }));
  await until(() =>
    expect(desk.drafts).toEqual([{ kind: 'childSettingsChanged', child: 'teo', changes: { timed: false } }]),
  );
});

test('the PIN is changed, and a new recovery code holds once it is written down', async () => {
  const { gate, getByRole, field, findByText, findByRole, container } = await settings();
  await userEvent.click(getByRole('button', { name: 'Change the PIN' }));
  await userEvent.fill(field('New PIN'), '1357');
  await userEvent.fill(field('The same PIN again'), '1357');
  await userEvent.keyboard('{Enter}');
  await findByText(/The PIN is changed/);
  await userEvent.click(await findByRole('button', { name: 'Make a new recovery code' }));
  const code = container.querySelector('.code-shown')?.textContent ?? '';
  expect(await findings(container)).toEqual([]);
  await userEvent.click(getByRole('checkbox', { name: 'I have written it down' }));
  await userEvent.click(getByRole('button', { name: 'Go on' }));
  await findByText(/The new recovery code holds/);
  gate.lock();
  expect(await gate.tryPin(pin)).toBe('wrong');
  expect(await gate.tryPin('1357')).toBe('opened');
  gate.lock();
  expect(await gate.tryRecoveryCode(code)).toBe('opened');
});

test('a switch that can’t be stored stays as it was, and says why', async () => {
  const { desk, getByRole, findByText } = await settings();
  desk.refuse('full');
  const box = getByRole('checkbox', { name: /^Keep the times/ }) as HTMLInputElement;
  await userEvent.click(box);
  await findByText(/no room left/);
  expect(box.checked).toBe(true);
  const across = getByRole('radio', { name: 'across' }) as HTMLInputElement;
  const stacked = getByRole('radio', { name: 'one number under the other' }) as HTMLInputElement;
  await userEvent.click(stacked);
  expect([across.checked, stacked.checked]).toEqual([true, false]);
  desk.refuse(null);
  await userEvent.click(stacked);
  await until(() => expect([across.checked, stacked.checked]).toEqual([false, true]));
});

test('the morning’s settings are kept as they are chosen, each with its usual value stated', async () => {
  const { wren, findByLabelText, getByLabelText, container } = await settings();
  await userEvent.selectOptions(await findByLabelText('A day’s work lasts at most'), '20 minutes');
  await until(() => expect(wren()?.minutes).toBe(20));
  await userEvent.selectOptions(getByLabelText('New facts in a card round'), '3');
  await until(() => expect(wren()?.newFacts).toBe(3));
  await userEvent.selectOptions(getByLabelText('New facts in a card round'), 'as many as the child takes in');
  await until(() => expect(wren()?.newFacts).toBeNull());
  await userEvent.selectOptions(getByLabelText('A look-back takes the place of'), 'no sheet');
  await until(() => expect(wren()?.lookBackEvery).toBe(0));
  await userEvent.click(getByLabelText('Saturday'));
  await until(() => expect(wren()?.schoolDays).toEqual([1, 2, 3, 4, 5, 6]));
  await userEvent.click(getByLabelText(/^Card rounds/));
  await until(() => expect(wren()?.cards).toBe(false));
  await userEvent.click(getByLabelText(/^End the day with a gap line/));
  await until(() => expect(wren()?.gapLines).toBe(true));
  await userEvent.selectOptions(getByLabelText('A spoken check comes with'), 'every 20th sheet');
  await until(() => expect(wren()?.spokenEvery).toBe(20));
  await userEvent.selectOptions(getByLabelText('A spoken check comes with'), 'no sheet');
  await until(() => expect(wren()?.spokenEvery).toBe(0));
  expect(container.textContent?.match(/[Uu]sually/g)?.length).toBeGreaterThan(12);
  expect(await findings(container)).toEqual([]);
});

test('the last school day of a week stays, and the page says why', async () => {
  const { wren, desk, findByLabelText, findByText } = await settings();
  await desk.record([{ kind: 'childSettingsChanged', child: 'wren', changes: { schoolDays: [2] } }]);
  await userEvent.click(await findByLabelText('Tuesday'));
  await findByText('One school day has to stay.');
  expect(wren()?.schoolDays).toEqual([2]);
});
