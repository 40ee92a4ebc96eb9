import { words } from '../../src/child/words';
import { launchDetached, type Served } from '../journeys/browser';
import { settle } from '../journeys/device';
import type { Tablet } from '../journeys/killable';
import { setDay } from '../journeys/other-day';
import { readStored } from '../journeys/stored';
import { judge } from './found';
import { type Ledger, makePagesTell, type Stored } from './ledger';
import { addTo, type Counts } from './tally';

/** One household that is tortured: where it is served and stored, and what is known of it. */
export interface House {
  readonly served: Served;
  readonly profile: string;
  readonly ledger: Ledger;
  readonly tally: Counts;
}

/** What is on the disk, and whether the child is where it was. */
export async function look(
  { ledger, tally, served }: House,
  { page }: Tablet,
  heading: string,
): Promise<void> {
  tally.rounds += 1;
  addTo(tally.screens, heading);
  await page.goto(`${served.url}manifest.webmanifest`);
  const stored = await storedIfAny(page);
  const { lost, torn } = judge(ledger, stored);
  for (const key of lost) note(tally.lost, `round ${tally.rounds}, “${heading}”: ${key}`);
  for (const what of torn) note(tally.torn, `round ${tally.rounds}, “${heading}”: ${what}`);
  ledger.setTo(stored);
  await page.goto(served.url);
  await settle(page);
  for (const alert of await page.getByRole('alert').allTextContents()) note(tally.refused, alert);
  const seen = await page.locator('h1').first().textContent();
  if (standsOpen(stored) && seen !== words.away)
    note(tally.notTakenUp, `round ${tally.rounds}: “${heading}” came back as “${seen}”`);
}

/** Whether the child who has the device is in mid-sitting. */
function standsOpen(stored: Stored): boolean {
  const active = stored['meta/kiosk'];
  return Object.entries(stored).some(([key, entry]) => {
    const { what, id, plan } = entry as {
      readonly what?: string;
      readonly id: string;
      readonly plan: { readonly child: string; readonly prompts: readonly string[] };
    };
    if (!/^journal\//.test(key) || what !== 'head' || plan.child !== active) return false;
    const visits = Object.keys(stored).filter((other) => other.startsWith(`journal/${id}/visit/`));
    return visits.length < plan.prompts.length;
  });
}

async function storedIfAny(page: Tablet['page']): Promise<Stored> {
  const names = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
  return names.includes('sumstitch') ? readStored(page) : {};
}

/** Opens the browser on the household as it was left. */
export async function open(house: House): Promise<Tablet> {
  const detached = await launchDetached(house.profile);
  await setDay(detached.context);
  await makePagesTell(detached.context);
  const page = detached.context.pages()[0] ?? (await detached.context.newPage());
  const tablet = { ...detached, page, cdp: await detached.context.newCDPSession(page) };
  return openPage(house, tablet, page);
}

/** Makes a page tell what it writes. */
export async function openPage(
  { served, ledger, tally }: House,
  tablet: Tablet,
  page: Tablet['page'],
): Promise<Tablet> {
  const isNew = page !== tablet.page || page.url() === 'about:blank';
  const cdp = page === tablet.page ? tablet.cdp : await tablet.context.newCDPSession(page);
  if (isNew) {
    page.setDefaultTimeout(10_000);
    page.on('pageerror', (error) => note(tally.unhandled, String(error)));
    await ledger.follow(page, cdp);
  }
  if (Object.keys(ledger.acknowledged()).length === 0) {
    await page.goto(served.url);
    await settle(page);
  }
  return { ...tablet, page, cdp };
}

/** Adds to a list of the tally. */
export function note(list: string[], what: string): void {
  list.push(what);
}
