import { signal } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { FactId } from '../../../src/core/fact/fact';
import { FactPicker } from '../../../src/parent/fact-grid/fact-picker';
import { knownWords } from '../../../src/parent/fact-grid/words';
import { findings } from '../axe';

afterEach(cleanup);

function picker() {
  const marked = signal<ReadonlySet<FactId>>(new Set());
  const mark = (facts: readonly FactId[], isMarked: boolean) => {
    const next = new Set(marked.value);
    for (const fact of facts) isMarked ? next.add(fact) : next.delete(fact);
    marked.value = next;
  };
  const Held = () => <FactPicker marked={marked.value} words={knownWords} onMark={mark} />;
  return { ...render(<Held />), marked };
}

test('the grid is one stop of the tab key, and remembers where one was in it', async () => {
  const { container, getByRole } = picker();
  expect(container.querySelectorAll('table button[tabindex="0"]')).toHaveLength(1);
  getByRole('button', { name: '0 + 0 = 0, not known' }).focus();
  await userEvent.keyboard('{ArrowDown}{ArrowRight}');
  expect(document.activeElement?.getAttribute('aria-label')).toBe('1 + 1 = 2, not known');
  await userEvent.keyboard('{Tab}{Shift>}{Tab}{/Shift}');
  expect(document.activeElement?.getAttribute('aria-label')).toBe('1 + 1 = 2, not known');
});

test('space marks a fact, its state told in words and by aria-pressed', async () => {
  const { getByRole, marked } = picker();
  getByRole('button', { name: '0 + 0 = 0, not known' }).focus();
  await userEvent.keyboard(' ');
  const cell = getByRole('button', { name: '0 + 0 = 0, known' });
  expect(cell.getAttribute('aria-pressed')).toBe('true');
  expect([...marked.value]).toEqual(['add-0-0']);
});

test('the corner marks the whole operation and, once all is marked, takes it back', async () => {
  const { getByRole, marked } = picker();
  await userEvent.click(getByRole('button', { name: /^All of addition: 0 of 100/ }));
  expect(marked.value.size).toBe(100);
  await userEvent.click(getByRole('button', { name: /^All of addition: 100 of 100/ }));
  expect(marked.value.size).toBe(0);
});

test('a row partly marked is first filled, then emptied', async () => {
  const { getByRole, marked } = picker();
  await userEvent.click(getByRole('button', { name: '3 + 4 = 7, not known' }));
  await userEvent.click(getByRole('button', { name: /^Everything with 3 first: 1 of 10/ }));
  expect(marked.value.size).toBe(10);
  await userEvent.click(getByRole('button', { name: /^Everything with 3 first: 10 of 10/ }));
  expect(marked.value.size).toBe(0);
});

test('multiplication and division reach to the 12s when asked, addition never', async () => {
  const { container, getByRole, queryByRole } = picker();
  expect(queryByRole('checkbox')).toBeNull();
  await userEvent.click(getByRole('radio', { name: 'Division' }));
  expect(container.querySelectorAll('td button')).toHaveLength(90);
  await userEvent.click(getByRole('checkbox', { name: 'Up to the 12s' }));
  expect(container.querySelectorAll('td button')).toHaveLength(156);
  expect(await findings(container)).toEqual([]);
});

test('every cell is at least 24 px each way at 320 px (WCAG 2.2, 2.5.8)', async () => {
  const { container } = picker();
  (container as HTMLElement).style.width = '288px';
  for (const cell of container.querySelectorAll('td button')) {
    const { width, height } = cell.getBoundingClientRect();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
  }
});
