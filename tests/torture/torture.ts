import { setTimeout as sleep } from 'node:timers/promises';
import { words } from '../../src/child/words';
import { type Dice, makeDice } from '../../src/core/sheet/dice';
import { makeProfile, serveBuilt } from '../journeys/browser';
import { settle } from '../journeys/device';
import type { Tablet } from '../journeys/killable';
import { choosePin, openPages, setUp } from '../journeys/parent-hand';
import { kindOf } from './found';
import { type House, look, note, open, openPage } from './house';
import { createLedger } from './ledger';
import { act } from './monkey';
import { addTo, type Counts, type Tally } from './tally';
import { isLogTorn } from './torn-log';

export interface TortureOptions {
  readonly seed: number;
  readonly rounds: number;
  /** Rounds out of ten that end in a kill of the whole browser; the others take less time. */
  readonly killsInTen: number;
  /** Most things done in a round before it is broken off. */
  readonly steps?: number;
  /** Households tortured at the same time. */
  readonly lanes?: number;
  /** Rounds on one household before a new one is set up. */
  readonly roundsEach?: number;
  readonly tell?: (line: string) => void;
}

/** Goes about in the app at random and breaks it off at random, round after round, and counts what came of it. */
export async function torture(options: TortureOptions): Promise<Tally> {
  const { seed, rounds, lanes = 1, roundsEach = 50 } = options;
  const tally: Counts = {
    seed,
    rounds: 0,
    faults: new Map(),
    inFlight: new Map(),
    screens: new Map(),
    tornLogs: 0,
    acknowledged: 0,
    lost: [],
    torn: [],
    notTakenUp: [],
    refused: [],
    unhandled: [],
  };
  const run = async (lane: number) => {
    const dice = makeDice(seed + lane);
    while (tally.rounds < rounds) await tortureHousehold(tally, dice, roundsEach, options);
  };
  await Promise.all(Array.from({ length: lanes }, (_, lane) => run(lane)));
  return tally;
}

async function tortureHousehold(
  tally: Counts,
  dice: Dice,
  most: number,
  options: TortureOptions,
): Promise<void> {
  const served = await serveBuilt();
  const { profile, remove } = makeProfile();
  const ledger = createLedger();
  const house: House = { served, profile, ledger, tally };
  let tablet = await open(house);
  try {
    tablet = await tortureSetUp(house, tablet, dice);
    for (let made = 0; made < most && tally.rounds < options.rounds; made += 1) {
      const startedMs = performance.now();
      const isKill = dice.below(10) < options.killsInTen;
      const fault = isKill ? 'browser killed' : (gentle[dice.below(gentle.length)] ?? 'tab closed');
      tablet = await oneRound(house, tablet, dice, fault, 1 + dice.below(options.steps ?? 7));
      options.tell?.(
        `${tally.rounds} ${fault} ${Math.round(performance.now() - startedMs)} ms, ${house.ledger.count()} writes, ${[...tally.screens.keys()].at(-1)}`,
      );
    }
  } finally {
    tally.acknowledged += ledger.count();
    await tablet.kill();
    await served.close();
    remove();
  }
}

const gentle = ['tab closed', 'tab crashed', 'tab frozen and thawed', 'service worker ended'] as const;
type Fault = 'browser killed' | (typeof gentle)[number];

/** The first set-up is killed once on its way, then done whole. */
async function tortureSetUp(house: House, tablet: Tablet, dice: Dice): Promise<Tablet> {
  const doing = choosePin(tablet.page).catch(() => undefined);
  await sleep(dice.below(4000));
  const again = await killAndLook(house, tablet, 'set-up');
  await doing;
  const stored = house.ledger.acknowledged();
  if ('meta/gate' in stored) {
    // A PIN was kept, and who knows it goes on from there: a household anew is quicker to test from.
    await again.page.evaluate(
      () =>
        new Promise((resolve) => {
          const request = indexedDB.deleteDatabase('sumstitch');
          request.onsuccess = resolve;
          request.onerror = resolve;
        }),
    );
    house.ledger.setTo({});
    await again.page.reload();
    await settle(again.page);
  }
  await setUp(again.page, 'Wren', 'Teo');
  return again;
}

async function oneRound(
  house: House,
  tablet: Tablet,
  dice: Dice,
  fault: Fault,
  steps: number,
): Promise<Tablet> {
  const { ledger, tally } = house;
  let heading = '';
  let hasEnded = false;
  const isParent = dice.below(10) < 3;
  const wander = async () => {
    if (isParent) await enterPages(tablet);
    for (let done = 0; done < steps && !hasEnded; done += 1) heading = await act(tablet, dice);
  };
  const wandering = wander().catch((error: unknown) => error);
  if (fault === 'browser killed') {
    const isInWrite = dice.below(2) === 0;
    const atWrite = new Promise<void>((resolve) => ledger.onNextWrite(resolve));
    await Promise.race([isInWrite ? atWrite : sleep(dice.below(3000)), wandering, sleep(4000)]);
    const again = await killAndLook(house, tablet, heading, () => {
      hasEnded = true;
    });
    await wandering;
    return again;
  }
  const failed = await wandering;
  if (failed instanceof Error) note(tally.notTakenUp, `${heading}: ${failed.message}`);
  return gentleFault(house, tablet, fault, heading);
}

/** Through the gate, where the way to it is open. */
async function enterPages({ page }: Tablet): Promise<void> {
  const door = page.getByRole('button', { name: words.grownUps, exact: true });
  // After wrong tries there is a wait, which is no fault.
  if (await door.count()) await openPages(page).catch(() => undefined);
}

async function killAndLook(house: House, tablet: Tablet, heading: string, dead = () => {}): Promise<Tablet> {
  const { ledger, tally } = house;
  dead();
  await tablet.kill();
  if (isLogTorn(house.profile, house.served.port)) tally.tornLogs += 1;
  addTo(tally.faults, 'browser killed');
  addTo(tally.inFlight, kindOf(ledger));
  const again = await open(house);
  await look(house, again, heading);
  return again;
}

async function gentleFault(house: House, tablet: Tablet, fault: Fault, heading: string): Promise<Tablet> {
  const { page, cdp, context } = tablet;
  addTo(house.tally.faults, fault);
  let after = tablet;
  switch (fault) {
    case 'tab frozen and thawed':
      await cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
      await sleep(200);
      await cdp.send('Page.setWebLifecycleState', { state: 'active' });
      house.tally.rounds += 1;
      addTo(house.tally.screens, heading);
      return tablet;
    case 'service worker ended':
      await cdp.send('ServiceWorker.enable');
      await cdp.send('ServiceWorker.stopAllWorkers');
      after = await openPage(house, tablet, page);
      break;
    case 'tab crashed':
      // It has nobody left to answer.
      void cdp.send('Page.crash').catch(() => undefined);
      await sleep(200);
      after = await openPage(house, tablet, await context.newPage());
      await page.close();
      break;
    default:
      after = await openPage(house, tablet, await context.newPage());
      await page.close();
  }
  await look(house, after, heading);
  return after;
}
