import { signal } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { Household } from '../src/household';
import type { StorageState } from '../src/state/storage-state';
import { childDrafts, openHome } from './state/a-home';
import '../src/first.css';
import '../src/ui/cloth.css';
import '../src/ui/tokens.css';

afterEach(cleanup);

const full: StorageState = {
  persisted: true,
  trouble: { what: 'full' },
  waiting: 1,
  later: 0,
};

describe('while storage is in trouble', () => {
  it.each([
    [1280, 800],
    [820, 1180],
    [390, 844],
  ])('a grown-up is asked for in a strip that covers no button at %i by %i', async (width, height) => {
    await page.viewport(width, height);
    const { app } = await openHome({ records: [...childDrafts('ann', 'Ann'), ...childDrafts('bo', 'Bo')] });
    app.kiosk.pick('ann');
    const desk = { ...app.desk, storage: signal(full) };
    render(<Household house={{ app: { ...app, desk }, gate: null }} />);
    const strip = document.querySelector('[role="alert"]')?.getBoundingClientRect() ?? new DOMRect();
    expect(strip.bottom).toBe(height);
    const buttons = [...document.querySelectorAll('button')];
    expect(buttons.length).toBeGreaterThanOrEqual(3);
    for (const button of buttons)
      expect(button.getBoundingClientRect().bottom, button.outerHTML).toBeLessThanOrEqual(strip.top);
  });
});
