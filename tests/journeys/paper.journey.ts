import { afterEach, expect, test } from 'vitest';
import { parseFact } from '../../src/core/fact/fact';
import { writtenFact, writtenWhole } from '../../src/core/fact/written';
import { codeOf } from '../../src/core/paper/paper-code';
import type { SheetPrinted } from '../../src/core/record/household-record';
import { paperSizes } from '../../src/paper/paper-size';
import type { BrowserContext, Page } from './browser';
import { closeDevices, type Device, type DeviceOptions, expectQuiet, openDevice } from './device';
import { Keystrokes } from './keystrokes';
import { choose, openPages, press, setUp, turnTo } from './parent-hand';
import { readStored, storedSats } from './stored';

afterEach(closeDevices);

/** The print window would wait for a person. */
const noPrintWindow = (context: BrowserContext) =>
  context.addInitScript(() => {
    window.print = () => undefined;
  });

async function atHome(options: DeviceOptions, ...names: readonly [string, ...string[]]): Promise<Device> {
  const device = await openDevice({ ...options, before: noPrintWindow });
  await setUp(device.page, ...names);
  await openPages(device.page);
  return device;
}

async function printedRecords(page: Page): Promise<readonly SheetPrinted[]> {
  const stored = Object.values(await readStored(page)) as (Partial<SheetPrinted> | null)[];
  return stored.filter((value): value is SheetPrinted => value?.kind === 'sheetPrinted');
}

async function openPrint(page: Page): Promise<void> {
  await turnTo(page, 'Paper');
  await page
    .getByRole('navigation', { name: 'Parts of this page' })
    .getByRole('button', { name: 'Print' })
    .click();
}

async function print(page: Page, button: string): Promise<readonly SheetPrinted[]> {
  await press(page, button);
  await page.getByText(/to be found again by day or code/).waitFor();
  return printedRecords(page);
}

/** A print as its file has it: how many pages, and how large, in points. */
async function pdfOf(page: Page) {
  const file = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const boxes = [...file.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)];
  return {
    pages: [...file.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length,
    sizes: [
      ...new Set(boxes.map(([, wide, tall]) => `${Math.round(Number(wide))} ${Math.round(Number(tall))}`)),
    ],
  };
}

function inPoints(size: keyof typeof paperSizes): string {
  const { widthMm, heightMm } = paperSizes[size];
  return `${Math.round((widthMm / 25.4) * 72)} ${Math.round((heightMm / 25.4) * 72)}`;
}

/** What each page of a kind says, place by place, as it is printed. */
async function printedText(page: Page, places: string): Promise<readonly string[]> {
  await page.emulateMedia({ media: 'print' });
  const texts = await page.locator(places).allInnerTexts();
  await page.emulateMedia({ media: null });
  return texts.map((text) => text.replaceAll(/\s+/g, ' ').trim());
}

const facts = (ids: readonly string[]) => ids.flatMap((id) => parseFact(id) ?? []);

test('sheets of two children for two days go to the printer with their key, on either paper', async () => {
  const device = await atHome({}, 'Teo', 'Wren');
  const { page } = device;
  await openPrint(page);
  await page.getByLabel('School days', { exact: true }).selectOption('2');
  const records = await print(page, 'Print four sheets');
  const byCode = records.toSorted((x, y) => (codeOf(x) < codeOf(y) ? -1 : 1));
  expect(records).toHaveLength(4);
  expect(new Set(records.map(({ forDay }) => forDay)).size).toBe(2);

  for (const size of ['letter', 'a4'] as const) {
    await press(page, 'Print others');
    await page.getByLabel('Paper', { exact: true }).selectOption(size);
    await expect.poll(() => page.getByLabel('Paper', { exact: true }).inputValue()).toBe(size);
    // What was printed is printed again from its record.
    await turnTo(page, 'Today');
    await turnTo(page, 'Paper');
    await press(page, 'Enter a result');
    const [first] = byCode;
    if (!first) throw new Error('nothing printed');
    await press(page, `Print again: ${codeOf(first)}`);
    const asked = await printedText(page, '.a-sheet .asked');
    expect(asked).toEqual(facts(first.facts).map((fact) => `${writtenFact(fact)} =`));
    expect(await printedText(page, '.key .facts-row > span')).toEqual(facts(first.facts).map(writtenWhole));
    expect(await printedText(page, '.paper-code')).toEqual([codeOf(first), codeOf(first)]);
    await page.emulateMedia({ media: 'print' });
    // Nothing of the page around it.
    expect((await page.locator('main').allInnerTexts()).join(' ')).not.toMatch(/Enter a result|Print|Lock/);
    await page.emulateMedia({ media: null });
    expect(await pdfOf(page)).toEqual({ pages: 2, sizes: [inPoints(size)] });
  }
  expectQuiet(device);
});

test('flash cards, gap lines, the fact grid and the long cloth have their pages; backs lie behind their fronts', async () => {
  const device = await atHome({}, 'Teo');
  const { page } = device;
  await openPrint(page);
  await page.getByLabel('Flash cards', { exact: true }).check();
  const set = await page.getByLabel('From which set', { exact: true }).inputValue();
  expect(set).toBe('times-3');
  const card = async (side: string) => {
    await page.emulateMedia({ media: 'print' });
    const cards = await page.locator(`.card-${side} .a-card`).evaluateAll((all) =>
      all.map((one) => {
        const sheet = one.closest('.paper-page')?.getBoundingClientRect();
        const at = one.getBoundingClientRect();
        const [left, right] = [at.left - (sheet?.left ?? 0), (sheet?.right ?? 0) - at.right];
        return {
          fact: one.getAttribute('data-fact') ?? '',
          text: one.textContent,
          left,
          right,
          top: at.top - (sheet?.top ?? 0),
        };
      }),
    );
    await page.emulateMedia({ media: null });
    return new Map(cards.map((one) => [one.fact, one]));
  };
  const [fronts, backs] = [await card('fronts'), await card('backs')];
  expect(fronts.size).toBeGreaterThanOrEqual(6);
  for (const [id, front] of fronts) {
    const [fact] = facts([id]);
    const back = backs.get(id);
    expect([front.text, back?.text]).toEqual([fact && writtenFact(fact), `${fact?.answer}`]);
    // Turned over the long edge, the back's left edge is the front's right one.
    expect(back?.left).toBeCloseTo(front.right, 1);
    expect(back?.top).toBeCloseTo(front.top, 1);
  }
  expect((await pdfOf(page)).pages).toBe(2);

  await page.getByLabel('Gap lines and stories', { exact: true }).check();
  expect(await page.locator('.gap-line').count()).toBe(6);
  expect(await page.locator('.story').count()).toBe(2);
  expect((await pdfOf(page)).pages).toBe(2);
  await page.getByLabel('The fact grid', { exact: true }).check();
  await page.locator('.paper-grid').waitFor();
  expect(await page.locator('.paper-grid tbody td').count()).toBe(100);
  expect((await pdfOf(page)).pages).toBe(1);
  await page.getByLabel('The long cloth', { exact: true }).check();
  await page.getByText('There is no piece yet.').waitFor();
  expectQuiet(device);
});

test('a timed sheet is entered by touch in under 20 s, and marked like one sat on the screen', async () => {
  const device = await atHome({ hasTouch: true, viewport: { width: 820, height: 1180 } }, 'Teo');
  const { page } = device;
  await choose(page, 'Sheets are sat', 'with a clock');
  await openPrint(page);
  const [sheet] = await print(page, 'Print one sheet');
  if (!sheet) throw new Error('nothing printed');
  await turnTo(page, 'Today');
  await turnTo(page, 'Paper');
  await page.getByRole('button', { name: 'Enter a result' }).tap();
  const time = new Keystrokes();
  const tap = async (at: ReturnType<Page['locator']>) => {
    for (const act of ['think', 'point', 'press'] as const) time.add(act);
    await at.tap();
  };
  const cell = (place: number) => page.locator(`.mark-grid [data-place="${place}"]`);
  await tap(page.getByRole('button', { name: new RegExp(codeOf(sheet)) }).first());
  await tap(cell(21));
  for (const place of [3, 9, 17]) await tap(cell(place));
  expect(await page.locator('.enter-result').textContent()).toBe(
    'Even: 19 right by the bell, of 25. Three wrong, three not reached.',
  );
  await tap(page.getByRole('button', { name: 'Keep this result' }));
  await page.getByText('Kept. Even: 19 right by the bell, of 25.', { exact: false }).waitFor();
  // 6 taps, each with a thought: 15.3 s by the model.
  expect(time.counts).toMatchObject({ think: 6, point: 6, press: 6, key: 0 });
  expect(time.seconds).toBeLessThanOrEqual(20);

  const [sat] = await storedSats(page);
  expect(sat).toMatchObject({
    paper: true,
    purpose: 'sheet',
    set: sheet.set,
    seed: sheet.seed,
    prompts: sheet.facts,
    ended: 'bell',
    endedMs: null,
    keepTimes: false,
    clock: { allowanceMs: 45_000 },
  });
  expect(sat?.visits).toHaveLength(22);
  await turnTo(page, 'Today');
  expect(await page.locator('main').textContent()).toContain('Even: 19 right by the bell, of 25.');
  await turnTo(page, 'Sittings');
  expect(await page.locator('main').textContent()).toMatch(/Sheet on paper/);
  await turnTo(page, 'Marking');
  await page.getByRole('button', { name: /^Teo/ }).first().click();
  expect(await page.locator('main').textContent()).toContain('Done on paper: there are no times.');
  await turnTo(page, 'Over time');
  await turnTo(page, 'Facts');
  expectQuiet(device);
});

test('a timed sheet is entered by keyboard alone in under 20 s; its row and its mending follow on paper', async () => {
  const device = await atHome({}, 'Teo');
  const { page } = device;
  await choose(page, 'Sheets are sat', 'with a clock');
  await openPrint(page);
  const [sheet] = await print(page, 'Print one sheet');
  if (!sheet) throw new Error('nothing printed');
  await press(page, 'Enter a result');
  await turnTo(page, 'Today');
  await turnTo(page, 'Paper');
  const time = new Keystrokes();
  const keys = async (...all: readonly string[]) => {
    time.add('think');
    time.add('key', all.length);
    for (const key of all) await page.keyboard.press(key);
  };
  const code = page.getByLabel('Code at the foot of the sheet', { exact: true });
  await keys('Tab', 'Tab', 'Tab', 'Tab');
  expect(await code.evaluate((field) => field === document.activeElement)).toBe(true);
  await keys(...codeOf(sheet).slice(0, 4), 'Enter');
  await page.locator('.mark-grid [data-place="24"]:focus').waitFor();
  // Sixteen by the bell: from the last cell up a row and left four.
  await keys('ArrowUp', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'Enter');
  await keys('ArrowUp', 'Enter');
  await keys('ArrowRight', 'ArrowUp', 'Enter');
  await keys('ArrowUp', 'Enter', 'Enter');
  await keys('Tab', 'Tab', 'Enter');
  await page.getByText('Kept. Loose: 13 right by the bell, of 25.', { exact: false }).waitFor();
  // 26 keys and 7 thoughts: 16.7 s by the model.
  expect(time.counts).toMatchObject({ think: 7, key: 26, point: 0 });
  expect(time.seconds).toBeLessThanOrEqual(20);
  const [sat] = await storedSats(page);
  expect(
    sat?.visits.map(({ end, given }) => (end === 'skipped' ? 'blank' : given === null ? 'wrong' : 'right')),
  ).toEqual(
    Array.from({ length: 16 }, (_, place) =>
      place === 10 || place === 6 ? 'wrong' : place === 1 ? 'blank' : 'right',
    ),
  );

  await page.getByRole('heading', { level: 2, name: 'Teo: an extra row' }).waitFor();
  await page.locator('.mark-grid [data-place="2"]').click();
  await press(page, 'Keep this row');
  await page.getByRole('heading', { level: 2, name: 'Teo: to put right' }).waitFor();
  await press(page, 'They are put right');
  await page.getByRole('heading', { level: 2, name: 'Teo: another of the same kind' }).waitFor();
  await press(page, 'Keep these');
  await expect.poll(() => page.locator('.mark-grid').count()).toBe(0);
  expect((await storedSats(page)).map(({ purpose, paper }) => [purpose, paper])).toEqual([
    ['sheet', true],
    ['row', true],
    ['mending', true],
    ['mending', true],
  ]);
  await turnTo(page, 'Today');
  expect(await page.locator('main').textContent()).toContain('Done. Loose: 13 right by the bell, of 25.');
  expectQuiet(device);
});

test('a code typed wrong gets a plain sentence; a right one of another device is made again', async () => {
  const device = await atHome({}, 'Teo');
  const { page } = device;
  await turnTo(page, 'Paper');
  const code = page.getByLabel('Code at the foot of the sheet', { exact: true });
  const made = codeOf({
    set: 'times-3',
    seed: 4829,
    shape: { length: 25, layout: 'across', hasKept: false },
  });
  const last = Number(made.at(-1));
  await code.fill(`${made.slice(0, -1)}${(last + 1) % 10}`);
  await code.press('Enter');
  await page.getByText('One digit of this code is mistyped. Compare it with the sheet.').waitFor();
  await code.fill('48 29');
  await code.press('Enter');
  await page.getByText('A code has ten digits: four, three and three.').waitFor();
  await code.fill(made);
  await code.press('Enter');
  await page.locator('.mark-grid').waitFor();
  expect(await page.locator('.mark-grid button').count()).toBe(25);
  expectQuiet(device);
});

test('the clock for a sheet on the table runs out as a thread, without a number, and rings', async () => {
  const device = await atHome({}, 'Teo');
  const { page } = device;
  await turnTo(page, 'Paper');
  await press(page, 'Run the clock');
  const seconds = page.getByLabel('Seconds', { exact: true });
  await seconds.fill('3');
  await press(page, 'Start');
  await page.getByText('A number of seconds from 5 to 600.').waitFor();
  await seconds.fill('5');
  await press(page, 'Start');
  await page.locator('.paper-thread .needle').waitFor();
  expect(await page.locator('.paper-clock').textContent()).not.toMatch(/\d/);
  await page.getByText('The bell has rung.').waitFor();
  await press(page, 'Enter the result');
  await page.getByLabel('Code at the foot of the sheet', { exact: true }).waitFor();
  expectQuiet(device);
});
