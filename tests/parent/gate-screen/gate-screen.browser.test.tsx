import '../../../src/ui/tokens.css';
import '../../../src/parent/parent.css';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { GateScreen } from '../../../src/parent/gate-screen/gate-screen';
import { findings } from '../axe';
import { pin, testGate } from '../open-pages';
import { until } from '../until';

afterEach(cleanup);

async function atTheDoor() {
  const gate = await testGate();
  gate.lock();
  const onBack = vi.fn();
  const view = render(<GateScreen gate={gate} onBack={onBack} />);
  const field = () => view.getByLabelText('PIN') as HTMLInputElement;
  const enter = async (text: string) => {
    await userEvent.fill(field(), text);
    await userEvent.keyboard('{Enter}');
  };
  return { ...view, gate, onBack, field, enter };
}

test('the right PIN opens by keyboard alone', async () => {
  const { gate, enter } = await atTheDoor();
  await enter(pin);
  await until(() => expect(gate.phase.value).toBe('open'));
});

test('the field is one a password manager fills: a numeric current password, and pasting works', async () => {
  const { gate, field } = await atTheDoor();
  expect(field().autocomplete).toBe('current-password');
  expect(field().inputMode).toBe('numeric');
  expect(field().type).toBe('password');
  field().focus();
  const pasted = new DataTransfer();
  pasted.setData('text/plain', pin);
  const allowed = field().dispatchEvent(
    new ClipboardEvent('paste', { clipboardData: pasted, bubbles: true, cancelable: true }),
  );
  expect(allowed).toBe(true);
  expect(gate.phase.value).toBe('locked');
});

test('letters are told to be no PIN, and stay in the field', async () => {
  const { findByText, field, enter } = await atTheDoor();
  await enter('abcd');
  await findByText('A PIN has only digits, 0 to 9.');
  expect(field().value).toBe('abcd');
});

test('the third wrong try begins a wait, told in words; during it the right PIN stays in the field', async () => {
  const { gate, findByText, field, enter } = await atTheDoor();
  await enter('1111');
  await findByText('That was not the PIN. Try again.');
  await enter('1112');
  await until(() => expect(field().value).toBe(''));
  await enter('1113');
  await findByText('That was not the PIN. Wait 2 seconds, then try again.');
  await enter(pin);
  await findByText(/The wait is not over yet/);
  expect(field().value).toBe(pin);
  expect(gate.phase.value).toBe('locked');
  await findByText('You can try again now.', undefined, { timeout: 4000 });
  await userEvent.click(field());
  await userEvent.keyboard('{Enter}');
  await until(() => expect(gate.phase.value).toBe('open'));
});

test('a page opened in mid-wait says why there is one', async () => {
  const gate = await testGate();
  gate.lock();
  for (const wrong of ['1111', '1112', '1113']) await gate.tryPin(wrong);
  const { findByText } = render(<GateScreen gate={gate} onBack={() => undefined} />);
  await findByText('There were wrong tries before. Wait 2 seconds, then try again.');
});

test('a forgotten PIN: the recovery code in small letters, then a new PIN twice', async () => {
  const { gate, getByRole, getByLabelText, findByRole, findByText } = await atTheDoor();
  await userEvent.click(getByRole('button', { name: 'Forgot the PIN?' }));
  await findByRole('heading', { name: 'Forgot the PIN?' });
  await userEvent.fill(getByLabelText('Recovery code'), '0000 0000');
  await userEvent.keyboard('{Enter}');
  await findByText(/16 letters and digits\. Check/);
  await userEvent.fill(getByLabelText('Recovery code'), gate.recoveryCode.toLowerCase());
  await userEvent.keyboard('{Enter}');
  await findByRole('heading', { name: 'Choose a new PIN' });
  await userEvent.fill(getByLabelText('New PIN'), '123');
  await userEvent.keyboard('{Enter}');
  await until(() => expect(document.body.textContent).toContain('A PIN has at least 4 digits.'));
  await userEvent.fill(getByLabelText('New PIN'), '9753');
  await userEvent.fill(getByLabelText('The same PIN again'), '9754');
  await userEvent.keyboard('{Enter}');
  await until(() => expect(document.body.textContent).toContain('The two PINs are not the same.'));
  await userEvent.fill(getByLabelText('The same PIN again'), '9753');
  await userEvent.keyboard('{Enter}');
  await until(() => expect(gate.phase.value).toBe('open'));
  gate.lock();
  expect(await gate.tryPin('9753')).toBe('opened');
});

test('there is a way back to the cloth', async () => {
  const { getByRole, onBack } = await atTheDoor();
  await userEvent.click(getByRole('button', { name: 'Back to the cloth' }));
  expect(onBack).toHaveBeenCalledOnce();
});

test('axe finds nothing at the door, nor where the code is typed, nor where a new PIN is chosen', async () => {
  const { gate, container, getByRole, findByRole } = await atTheDoor();
  expect(await findings(container)).toEqual([]);
  await userEvent.click(getByRole('button', { name: 'Forgot the PIN?' }));
  expect(await findings(container)).toEqual([]);
  await gate.tryRecoveryCode(gate.recoveryCode);
  await findByRole('heading', { name: 'Choose a new PIN' });
  expect(await findings(container)).toEqual([]);
});
