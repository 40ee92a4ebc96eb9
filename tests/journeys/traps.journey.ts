import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import type { Sat } from '../../src/core/record/sat';
import { type Card, type Hand, keyHand, nextCard, sit } from './child-hand';
import { closeDevices, type Device, expectQuiet, openDevice } from './device';
import { beginSheet as passToSheet } from './morning';
import { choose, handOver, openPages, seeHeading, setNumbers, setUp } from './parent-hand';
import { storedSats } from './stored';

let device: Device;
let hand: Hand;
beforeEach(async () => {
  device = await openDevice();
});
afterEach(async () => {
  expectQuiet(device);
  await closeDevices();
});

/** A child at the first card of a sheet. */
async function beginSheet({ isTimed, length = 25 }: { readonly isTimed: boolean; readonly length?: number }) {
  const { page } = device;
  await setUp(page, 'Wren');
  await openPages(page);
  if (length !== 25) await setNumbers(page, { 'Length of a sheet': `${length}` });
  if (isTimed) await choose(page, 'Sheets are sat', 'with a clock');
  await handOver(page, 'Wren');
  hand = await keyHand(device);
  await passToSheet(page, async () => hand);
}

async function sheetSat(): Promise<Sat> {
  let sheet: Sat | undefined;
  await expect
    .poll(async () => {
      sheet = (await storedSats(device.page)).find(({ purpose }) => purpose === 'sheet');
      return sheet !== undefined;
    })
    .toBe(true);
  if (!sheet) throw new Error('No sheet was sat.');
  return sheet;
}

/** Answers that decided their place, by place: the last that did. */
function answersOf(sheet: Sat): ReadonlyMap<number, string | null> {
  return new Map(sheet.visits.filter(({ end }) => end === 'taken').map(({ place, given }) => [place, given]));
}

/** Sits until a card with an answer of so many digits is up. */
async function untilDigits(digits: number): Promise<Card> {
  for (;;) {
    const card = await nextCard(device.page, null);
    if (!card) throw new Error(`No card has an answer of ${digits} digits.`);
    if (card.answer.length === digits) return card;
    await sit(device.page, hand, { takesItself: true, until: 1 });
    await nextCard(device.page, card.id);
  }
}

describe('on a timed sheet, which takes answers by their digits', () => {
  beforeEach(() => beginSheet({ isTimed: true }));

  test('two digits typed for a fact of one spoil that card and not the next', async () => {
    const card = await untilDigits(1);
    const nth = Number(card.id.slice('card-'.length)) - 1;
    await hand.press('1', card.seenMs + 320);
    const next = await nextCard(device.page, card.id);
    // The second digit of the same answer falls as the next card comes up.
    await hand.press('2', (next?.seenMs ?? 0) + 20);
    await sit(device.page, hand, { takesItself: true });
    const sheet = await sheetSat();
    const [spoilt, after] = [answersOf(sheet).get(nth), answersOf(sheet).get(nth + 1)];
    expect(spoilt).toBe('1');
    expect(after).toBe(next?.answer);
    const visit = sheet.visits.find(({ place }) => place === nth);
    expect(visit?.keys.map(([key]) => key)).toEqual(['1', '2']);
    expect(visit?.late).toBe(1);
  });

  test('a one-digit answer can be taken back, the clock running', async () => {
    const card = await untilDigits(1);
    const wrong = card.answer === '9' ? '8' : '9';
    await hand.press(wrong as '9', card.seenMs + 320);
    const next = await nextCard(device.page, card.id);
    await hand.press('back', (next?.seenMs ?? 0) + 320);
    const again = await nextCard(device.page, next?.id ?? null);
    expect(again?.text).toBe(card.text);
    await sit(device.page, hand, { takesItself: true });
    const sheet = await sheetSat();
    const nth = Number(card.id.slice('card-'.length)) - 1;
    expect(answersOf(sheet).get(nth)).toBe(card.answer);
    expect(sheet.ended).toBe('finished');
    expect(sheet.away).toEqual([]);
  });

  test('a child sure that the answer has one digit can give it with done', async () => {
    const card = await untilDigits(2);
    await hand.press('9', card.seenMs + 320);
    await hand.press('done', card.seenMs + 330);
    await sit(device.page, hand, { takesItself: true });
    const nth = Number(card.id.slice('card-'.length)) - 1;
    expect(answersOf(await sheetSat()).get(nth)).toBe('9');
  });

  test.each([
    ['just before the bell counts', -1, undefined],
    ['just after it is kept and does not count', 1, true],
  ])('a key %s', async (_, offMs, isAfter) => {
    const { page } = device;
    const card = await nextCard(page, null);
    if (!card) throw new Error('There is no card.');
    const bellMs = (await onsetOf('card-1')) + 45_000;
    await sit(page, hand, { takesItself: true, until: 1, atMs: () => bellMs + offMs });
    const rest = await sit(page, hand, { takesItself: true, atMs: () => bellMs + 5000 });
    const sheet = await sheetSat();
    expect(sheet.ended).toBe('bell');
    expect(sheet.visits[0]).toMatchObject({ given: card.answer, took: 'itself' });
    expect(sheet.visits[0]?.afterBell).toBe(isAfter);
    // Before the bell one more card comes up, to be finished; after it none does.
    expect(rest).toHaveLength(isAfter ? 0 : 1);
  });
});

test('a hundred cards give a hundred onsets, each later than the one before', async () => {
  await beginSheet({ isTimed: false, length: 100 });
  const cards = await sit(device.page, hand);
  expect(cards).toHaveLength(100);
  await seeHeading(device.page, words.piece);
  const { visits, isolated, clockStepMs } = await sheetSat();
  expect(isolated).toBe(true);
  expect(clockStepMs).toBeLessThan(0.1);
  expect(visits).toHaveLength(100);
  expect(new Set(visits.map(({ onsetBy }) => onsetBy))).toEqual(new Set(['element']));
  const onsets = visits.map(({ onsetMs }) => onsetMs ?? Number.NaN);
  expect(onsets.every((onset, nth) => nth === 0 || onset > (onsets[nth - 1] ?? Number.NaN))).toBe(true);
});

test('the bell rings by itself when the time is over, and the card on the screen may be finished', async () => {
  const { page } = device;
  await setUp(page, 'Wren');
  await openPages(page);
  await setNumbers(page, { 'Time allowed with the clock': '5' });
  await choose(page, 'Sheets are sat', 'with a clock');
  await handOver(page, 'Wren');
  hand = await keyHand(device);
  await passToSheet(page, async () => hand);
  await sit(page, hand, { takesItself: true, until: 2 });
  const card = await nextCard(page, null);
  await page.waitForTimeout(5200);
  expect((await nextCard(page, null))?.id).toBe(card?.id);
  await page.keyboard.type(card?.answer ?? '');
  await seeHeading(page, words.piece);
  const sheet = await sheetSat();
  expect(sheet.ended).toBe('bell');
  expect(sheet.visits.map(({ afterBell }) => afterBell)).toEqual([undefined, undefined, true]);
});

/** When a card was painted, by the browser's own word. */
function onsetOf(id: string): Promise<number> {
  return device.page.evaluate(
    (wanted) =>
      new Promise<number>((resolve) => {
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & { id: string; renderTime: number })[])
            if (entry.id === wanted) latest = entry.renderTime;
          if (latest > 0) resolve(latest);
        }).observe({ type: 'element', buffered: true });
        let latest = 0;
      }),
    id,
  );
}
