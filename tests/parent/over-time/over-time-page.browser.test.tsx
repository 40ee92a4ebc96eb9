import { expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { findings } from '../axe';
import { boatDesk } from '../boat-desk';
import { fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';
import { openPages } from '../open-pages';
import { until } from '../until';

async function overTimeOf(child: string) {
  const view = await openPages(boatDesk(), 'overTime');
  await userEvent.click(await view.findByRole('button', { name: child }));
  await view.findByRole('heading', { level: 2, name: 'Minutes a day' });
  return view;
}

/** How many marks one element draws; of a path a cross is two strokes, any other mark one outline. */
function marksIn(element: Element): number {
  const path = element.getAttribute('d');
  if (path === null) return 1;
  const outlines = path.match(/M/g)?.length ?? 0;
  return /[AZ]/i.test(path) ? outlines : outlines / 2;
}

test.each(['Wren', 'Teo', 'Juniper'])(
  'every chart of %s has a name and the same as a table behind it',
  async (child) => {
    const { getAllByRole, container } = await overTimeOf(child);
    const figures = [...container.querySelectorAll('figure')];
    expect(figures.length).toBeGreaterThanOrEqual(4);
    expect(getAllByRole('img')).toHaveLength(figures.length);
    for (const figure of figures) {
      expect(figure.querySelector('table')).toBeNull();
      const details = figure.querySelector('details');
      if (details) details.open = true;
      await until(() => expect(figure.querySelector('table')).not.toBeNull());
      const chart = figure.querySelector('[role="img"]');
      expect(chart?.getAttribute('aria-label')).toMatch(/^[A-Z].*\.$/);
      const drawn = [...figure.querySelectorAll('.chart-frame .mark, .chart-frame .bar')];
      const marks = drawn.reduce((sum, path) => sum + marksIn(path), 0);
      const rows = figure.querySelectorAll('details tbody tr').length;
      // The one ratio is a mark with its two bounds: three rows.
      expect(rows).toBe(figure.querySelector('.same') ? 3 : marks);
    }
  },
);

test('marks with the clock and without differ in shape; nothing is drawn in another ink', async () => {
  const { container } = await overTimeOf('Teo');
  const shape = (title: string) => {
    const figure = [...container.querySelectorAll('figure')].find((one) =>
      one.textContent?.startsWith(title),
    );
    const outlines = figure?.querySelector('.chart-frame .mark')?.getAttribute('d');
    return /^M[^M]+/.exec(outlines ?? '')?.[0].replaceAll(/[\d.,-]+/g, ' ');
  };
  expect(shape('Right by the bell')).not.toBe(shape('Right without the clock'));
  expect(container.querySelectorAll('svg [fill="red"], svg [style]')).toHaveLength(0);
});

test('the bands begin where the limits say, named at the end of the last stretch', async () => {
  const { container } = await overTimeOf('Teo');
  const levels = [...container.querySelectorAll('.chart-frame .level')];
  const named = levels.flatMap((level) => level.querySelector('text')?.textContent ?? []);
  expect(named).toEqual(['Firm', 'Even', 'Loose']);
  expect(levels.length % 3).toBe(0);
});

test('no line crosses a change of conditions', async () => {
  const { container } = await overTimeOf('Juniper');
  for (const chart of container.querySelectorAll('.chart-frame')) {
    const breaks = [...chart.querySelectorAll('.break')].map((one) =>
      Number(/M([\d.]+)/.exec(one.getAttribute('d') ?? '')?.[1]),
    );
    for (const line of chart.querySelectorAll('.trend path, .level path')) {
      const [from, to] = [...(line.getAttribute('d') ?? '').matchAll(/[ML]([\d.]+)/g)].map(([, x]) =>
        Number(x),
      );
      expect(breaks.some((at) => at > (from ?? 0) + 1 && at < (to ?? 0) - 1)).toBe(false);
    }
  }
});

test('an interrupted sheet has a mark of its own and its word in the legend and the table', async () => {
  const { container } = await overTimeOf('Juniper');
  const figure = [...container.querySelectorAll('figure')].find((one) =>
    one.textContent?.startsWith('Right by the bell'),
  );
  const shapes = [...(figure?.querySelectorAll('.chart-frame .mark') ?? [])].map((mark) =>
    mark.getAttribute('d'),
  );
  expect(new Set(shapes).size).toBe(2);
  expect(figure?.querySelector('.legend')?.textContent).toContain('interrupted: its count says little');
  const details = figure?.querySelector('details');
  if (details) details.open = true;
  await until(() => expect(figure?.querySelector('tbody')?.textContent).toContain('interrupted'));
});

test('no line is drawn where the sentence says too few, or neither rising nor falling', async () => {
  for (const child of ['Wren', 'Teo', 'Juniper']) {
    const { container } = await overTimeOf(child);
    expect(container.querySelectorAll('.perhaps')).toHaveLength(0);
    for (const chart of container.querySelectorAll('.charts > div')) {
      const says = chart.querySelector('.said-reading')?.textContent ?? '';
      const lines = chart.querySelectorAll('.trend').length;
      if (/too few|neither clearly/.test(says) && !/before the change/.test(says)) expect(lines).toBe(0);
    }
  }
});

test('a parent reads no word of statistics', async () => {
  for (const child of ['Wren', 'Teo', 'Juniper']) {
    const { container } = await overTimeOf(child);
    expect(container.textContent).not.toMatch(
      /p-value|p = |significan|confidence|null hypothesis|median|Theil|Wilcoxon|McNemar|standard deviation/i,
    );
  }
});

test('published ranges are shown as what they are, never drawn on a chart', async () => {
  const { container } = await overTimeOf('Juniper');
  expect(container.textContent).toContain('Nobody has published ranges for answers keyed on a screen.');
  expect(container.textContent).toContain('Burns, VanDerHeyden & Jiban 2006');
  const charts = [...container.querySelectorAll('.chart-frame')].map((one) => one.textContent).join();
  expect(charts).not.toMatch(/mastered|instruction/);
});

test('nothing is wrong with it to axe, its tables open', async () => {
  for (const child of ['Wren', 'Teo', 'Juniper']) {
    const { container } = await overTimeOf(child);
    const behind = [...container.querySelectorAll('details')];
    for (const details of behind) details.open = true;
    await until(() => expect(behind.every((one) => one.querySelector('table'))).toBe(true));
    expect(await findings(container)).toEqual([]);
  }
});

test('how far back is the parent\u2019s to choose', async () => {
  const { getByRole, container } = await overTimeOf('Wren');
  const bars = () => container.querySelectorAll('.bar').length;
  const days = bars();
  await userEvent.click(getByRole('radio', { name: 'Everything' }));
  await until(() =>
    expect((getByRole('radio', { name: 'Everything' }) as HTMLInputElement).checked).toBe(true),
  );
  // Eight weeks lie within the twelve.
  expect(bars()).toBe(days);
});

test('before the first sheet it says what will stand there', async () => {
  const { findByText } = await openPages(fakeDesk('2026-11-25', twoChildren), 'overTime');
  await findByText(/^No sheet has been sat yet\./);
});
