import { join } from 'node:path';
import {
  type BrowserContext,
  type CDPSession,
  launch,
  type Page,
  type Served,
  serveBuilt,
} from '../journeys/browser';
import { markCards } from './presented';

const cleanups: (() => Promise<unknown>)[] = [];

/** Closes every page that stood beside the app. */
export async function closePages(): Promise<void> {
  for (const cleanup of cleanups.splice(0).reverse()) await cleanup();
}

export interface Opened {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly cdp: CDPSession;
  readonly served: Served;
  readonly close: () => Promise<void>;
}

/** Opens one of the pages set beside the app, its first card up. */
export async function openPage(
  name: 'floor' | 'peer',
  before?: (context: BrowserContext) => Promise<unknown>,
): Promise<Opened> {
  const folder = process.env['BENCH_PAGES'];
  if (!folder) throw new Error('The pages beside the app are built by npm run bench.');
  const served = await serveBuilt({ folder: join(folder, name) });
  const context = await launch({ viewport: { width: 1280, height: 800 } });
  cleanups.push(served.close, () => context.close());
  await context.addInitScript(markCards);
  await before?.(context);
  const page = await context.newPage();
  await page.goto(served.url);
  await page.locator('#card-0').waitFor();
  const cdp = await context.newCDPSession(page);
  return { context, page, cdp, served, close: closePages };
}
