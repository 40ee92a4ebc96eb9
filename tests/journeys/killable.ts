import { type CDPSession, type Detached, launchDetached, type Page } from './browser';
import { settle } from './device';
import { setDay } from './other-day';

/** A tablet whose battery can die at any moment. */
export interface Tablet extends Detached {
  readonly page: Page;
  readonly cdp: CDPSession;
}

const tablets: Detached[] = [];

/** Ends every tablet that a test opened; for `afterEach`. */
export async function endTablets(): Promise<void> {
  for (const { kill } of tablets.splice(0)) await kill();
}

/** Opens the app in a browser that keeps to the profile, and waits for its first screen. */
export async function openTablet(profile: string, url: string): Promise<Tablet> {
  const detached = await launchDetached(profile);
  tablets.push(detached);
  await setDay(detached.context);
  const page = detached.context.pages()[0] ?? (await detached.context.newPage());
  page.setDefaultTimeout(10_000);
  await page.goto(url);
  await settle(page);
  return { ...detached, page, cdp: await detached.context.newCDPSession(page) };
}
