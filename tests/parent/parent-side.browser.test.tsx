import { expect, test, vi } from 'vitest';
import { idleLimitMs } from '../../src/state/gate-idle';
import { findings } from './axe';
import { fakeDesk } from './fake-desk';
import { teosSheet, twoChildren, wrensSheet } from './made-household';
import { openPages } from './open-pages';
import { until } from './until';

const household = [
  ...twoChildren,
  wrensSheet(),
  teosSheet(),
  { kind: 'childSettingsChanged', child: 'teo', changes: { rowsSent: 'parent' } },
] as const;

test('the pages are behind the PIN, and while locked nothing of theirs is in the document', async () => {
  const desk = fakeDesk('2026-11-25', household);
  const { gate, findByRole, container } = await openPages(desk);
  await findByRole('heading', { level: 1, name: /^Today/ });
  expect(container.textContent).toContain('Teo');
  gate.lock();
  await findByRole('heading', { name: 'For grown-ups' });
  for (const word of ['Teo', 'Wren', 'Loose', 'Marking', 'Settings']) {
    expect(document.documentElement.outerHTML).not.toContain(`>${word}`);
  }
  expect(container.textContent).not.toContain('Teo');
});

test('three idle minutes lock the pages and tell the desk', async () => {
  const desk = fakeDesk('2026-11-25', household);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  try {
    const { gate } = await openPages(desk);
    await until(() => expect(document.querySelector('h1')?.textContent).toMatch(/^Today/));
    vi.advanceTimersByTime(idleLimitMs);
    expect(gate.phase.value).toBe('locked');
    expect(desk.locks()).toBe(1);
  } finally {
    vi.useRealTimers();
  }
});

test('handing over locks the gate and names the child', async () => {
  const desk = fakeDesk('2026-11-25', household);
  const { gate, findByRole } = await openPages(desk);
  (await findByRole('button', { name: 'Hand over to Wren' })).click();
  expect(desk.handedTo).toEqual(['wren']);
  expect(gate.phase.value).toBe('locked');
});

test('the trouble of the storage stands above every page in plain words', async () => {
  const desk = fakeDesk('2026-11-25', household);
  const { findByText } = await openPages(desk, 'about');
  desk.setStorage({ trouble: { what: 'full' }, later: 2 });
  await findByText(/no room left/);
  await findByText(/2 records were made by a newer version/);
});

for (const page of ['today', 'marking', 'children', 'sittings', 'settings', 'about'] as const) {
  test(`axe finds nothing on the page ${page}`, async () => {
    const { container, findByRole } = await openPages(fakeDesk('2026-11-25', household), page);
    await findByRole('heading', { level: 1 });
    for (const details of container.querySelectorAll('details')) details.open = true;
    expect(await findings(container)).toEqual([]);
  });
}
