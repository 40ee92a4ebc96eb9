import { afterEach, expect, test } from 'vitest';
import { words } from '../../src/child/words';
import type { Visit } from '../../src/core/record/sat';
import { makeProfile, type Page, serveBuilt } from './browser';
import { type Hand, keyHand, keysFor, nextCard, sit } from './child-hand';
import { endTablets, openTablet, type Tablet } from './killable';
import { beginSheet } from './morning';
import { handOver, openPages, press, seeHeading, setNumbers, setUp } from './parent-hand';
import { storedPlan, storedSats, storedVisits } from './stored';

const rounds = 20;

const cleanups: (() => unknown)[] = [];
afterEach(async () => {
  await endTablets();
  for (const cleanup of cleanups.splice(0).reverse()) await cleanup();
});

test(`killed ${rounds} times in mid-sheet, no acknowledged answer is lost`, async () => {
  const served = await serveBuilt();
  const { profile, remove } = makeProfile();
  cleanups.push(remove, served.close);
  let tablet = await openTablet(profile, served.url);
  await beginLongSheet(tablet);

  for (let round = 0; round < rounds; round += 1) {
    const hand = await keyHand(tablet);
    await sit(tablet.page, hand, { until: 1 });
    // Read past the app: what another connection finds is committed, which is what acknowledged means.
    const acknowledged = await storedVisits(tablet.page);
    // One more answer is in flight when the battery dies; it alone may be lost.
    await give(tablet.page, hand);
    await tablet.kill();

    tablet = await openTablet(profile, served.url);
    await seeHeading(tablet.page, words.away);
    const kept = await storedVisits(tablet.page);
    expect(acknowledged.length).toBeGreaterThanOrEqual(round);
    expect(kept.slice(0, acknowledged.length)).toEqual(acknowledged);
    await press(tablet.page, 'Carry on');
    // The same step: the first card of which no answer is kept.
    const prompt = (await storedPlan(tablet.page)).prompts[answersIn(kept)];
    expect((await nextCard(tablet.page, null))?.text).toBe(prompt === undefined ? '' : asRead(prompt));
  }

  await sit(tablet.page, await keyHand(tablet));
  await seeHeading(tablet.page, words.piece);
  const sheet = (await storedSats(tablet.page)).findLast(({ purpose }) => purpose === 'sheet');
  expect(sheet?.ended).toBe('finished');
  expect(sheet?.away).toHaveLength(rounds);
  const places = sheet?.visits.filter(({ end }) => end === 'taken').map(({ place }) => place);
  expect(places).toEqual(Array.from({ length: 100 }, (_, place) => place));
});

/** Gives the card on the screen its answer, and waits for nothing. */
async function give(page: Page, hand: Hand): Promise<void> {
  const card = await nextCard(page, null);
  if (!card) throw new Error('The sheet ended too soon.');
  for (const key of [...keysFor(card, 'right'), 'done' as const]) await hand.press(key, card.seenMs + 320);
}

function answersIn(visits: readonly Visit[]): number {
  return visits.filter(({ end }) => end === 'taken').length;
}

/** A prompt as the card shows it. */
function asRead(prompt: string): string {
  const [, a, b] = /^mul-(\d+)-(\d+)$/.exec(prompt) ?? [];
  return `${a} × ${b} =`;
}

/** A sheet of a hundred, so that it outlives every round. */
async function beginLongSheet({ page, cdp }: Tablet): Promise<void> {
  await setUp(page, 'Wren');
  await openPages(page);
  await setNumbers(page, { 'Length of a sheet': '100' });
  await handOver(page, 'Wren');
  await beginSheet(page, () => keyHand({ page, cdp }));
}
