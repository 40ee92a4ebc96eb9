import { cleanup, render } from '@testing-library/preact';
import { expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { ParentSide } from '../../src/parent/parent-side';
import { pages, place, turnTo } from '../../src/parent/place';
import { setupStep } from '../../src/parent/setup/progress';
import { idleLimitMs } from '../../src/state/gate-idle';
import { findings } from './axe';
import { fakeDesk } from './fake-desk';
import { teosSheet, twoChildren, wrensSheet } from './made-household';
import { openPages, testGate } from './open-pages';
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

for (const name of ['today', 'marking', 'children', 'sittings', 'settings', 'about'] as const) {
  test(`axe finds nothing on the page ${name}`, async () => {
    const { container, findByRole } = await openPages(fakeDesk('2026-11-25', household), name);
    await findByRole('heading', { level: 1 });
    for (const details of container.querySelectorAll('details')) details.open = true;
    expect(await findings(container)).toEqual([]);
  });
}

test('on the boat every page says so and leads home, and there is no PIN to change', async () => {
  cleanup();
  setupStep.value = null;
  place.value = { page: 'settings', sitting: null, child: null, fact: null };
  let left = 0;
  const view = render(
    <ParentSide
      desk={fakeDesk('2026-11-25', household)}
      gate={await testGate()}
      onBack={() => undefined}
      onLeaveBoat={() => {
        left += 1;
      }}
    />,
  );
  await view.findByText(/The boat is an invented household; nothing you do here touches yours\./);
  await view.findByRole('heading', { level: 1, name: 'Settings' });
  expect(view.queryByText('PIN and recovery code')).toBeNull();
  turnTo('about');
  await view.findByRole('heading', { level: 1, name: 'About Sumstitch' });
  await userEvent.click(view.getByRole('button', { name: 'Leave the boat' }));
  expect(left).toBe(1);
});

test('a grown-up called to a child’s cloth finds that child on every page', async () => {
  cleanup();
  setupStep.value = null;
  place.value = { page: 'today', sitting: null, child: null, fact: null };
  const desk = fakeDesk('2026-11-25', household);
  const [first, second] = desk.household.value.children;
  if (!first || !second) throw new Error('There are not two children.');
  const gate = await testGate();
  const view = render(<ParentSide desk={desk} gate={gate} onBack={() => undefined} calledBy={second.id} />);
  await view.findByRole('heading', { level: 1, name: /^Today/ });
  turnTo('settings');
  await view.findByRole('heading', { level: 2, name: `For ${second.name}` });
});

test('on a narrow screen the pages are one row: the open page, which opens the list, and the lock', async () => {
  await page.viewport(390, 844);
  const view = await openPages(fakeDesk('2026-11-25', household));
  const opener = await view.findByRole('button', { name: 'Pages: Today' });
  const top = view.container.querySelector('.top');
  expect(top?.clientHeight).toBeLessThan(60);
  expect(view.queryByRole('button', { name: 'Marking' })).toBeNull();
  await userEvent.click(opener);
  expect(opener.getAttribute('aria-expanded')).toBe('true');
  expect(await findings(view.container)).toEqual([]);
  await userEvent.keyboard('{Escape}');
  expect(opener.getAttribute('aria-expanded')).toBe('false');
  await userEvent.click(opener);
  await userEvent.click(await view.findByRole('button', { name: 'Marking' }));
  const title = await view.findByRole('heading', { level: 1, name: 'Marking' });
  expect(document.activeElement).toBe(title);
  await page.viewport(1280, 800);
});

test('no page is wider than a phone', async () => {
  await page.viewport(390, 844);
  for (const at of pages) {
    const view = await openPages(fakeDesk('2026-11-25', household), at);
    await view.findByRole('heading', { level: 1 });
    for (const details of view.container.querySelectorAll('details')) details.open = true;
    expect(document.documentElement.scrollWidth, at).toBeLessThanOrEqual(390);
  }
  await page.viewport(1280, 800);
});
