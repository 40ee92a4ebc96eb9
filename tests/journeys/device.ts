import { expect } from 'vitest';
import {
  type BrowserContext,
  type CDPSession,
  collectForeignRequests,
  type Launch,
  launch,
  makeProfile,
  type Page,
  type Served,
  serveBuilt,
} from './browser';
import { setDay } from './other-day';

/** One tablet: a served app, a browser with its store, and everything that went wrong on it. */
export interface Device {
  readonly served: Served;
  readonly context: BrowserContext;
  readonly page: Page;
  readonly cdp: CDPSession;
  readonly profile: string;
  /** Requests to anywhere else. */
  readonly foreign: readonly string[];
  /** Uncaught errors, failed requests and whatever the page's policy refused. */
  readonly faults: readonly string[];
  close(): Promise<void>;
}

export interface DeviceOptions extends Omit<Launch, 'profile'> {
  /** The device as it was left: the same store, with or without the server. */
  readonly again?: Pick<Device, 'served' | 'profile'>;
  /** The app is not expected to come as far as to ask for its worker. */
  readonly isWorkerless?: boolean;
  /** Days after the journey's first school day. */
  readonly daysOn?: number;
  /** Runs before the app in every page. */
  readonly before?: (context: BrowserContext) => Promise<unknown>;
}

const cleanups: (() => unknown)[] = [];

/** Closes every device that a test opened; for `afterEach`. */
export async function closeDevices(): Promise<void> {
  for (const cleanup of cleanups.splice(0).reverse()) await cleanup();
}

/** Opens the app in a fresh browser, or in a device as it was left, and waits for its first screen. */
export async function openDevice({
  again,
  before,
  daysOn = 0,
  isWorkerless = false,
  ...options
}: DeviceOptions = {}): Promise<Device> {
  const served = again?.served ?? (await serveBuilt());
  if (!again) cleanups.push(served.close);
  const profile = again?.profile ?? freshProfile();
  const context = await launch({ viewport: { width: 1280, height: 800 }, ...options, profile });
  // Nothing the app does takes this long; a journey that waits for what never comes should say so soon.
  context.setDefaultTimeout(10_000);
  const foreign = collectForeignRequests(context, served.url);
  const faults: string[] = [];
  await setDay(context, daysOn);
  await before?.(context);
  const page = context.pages()[0] ?? (await context.newPage());
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('requestfailed', (request) => {
    // A page that reloads itself drops what it was still fetching.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') faults.push(request.url());
  });
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  await page.goto(served.url);
  if (!isWorkerless) await settle(page);
  const close = () => context.close();
  cleanups.push(close);
  return { served, context, page, cdp: await context.newCDPSession(page), profile, foreign, faults, close };
}

/** Nothing was asked of another origin, and nothing failed. */
export function expectQuiet({ foreign, faults }: Device): void {
  expect(foreign).toEqual([]);
  expect(faults).toEqual([]);
}

/** Waits until the app's own screen stands in the place of bare linen, and the worker has it for offline. */
export async function settle(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.locator('main h1').first().waitFor({ state: 'attached' });
}

/** Reloads, as a child does who pulls or presses what should not be pressed. */
export async function reload(page: Page): Promise<void> {
  await page.reload();
  await settle(page);
}

function freshProfile(): string {
  const { profile, remove } = makeProfile();
  cleanups.push(remove);
  return profile;
}
