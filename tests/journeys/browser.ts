import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium } from 'playwright';
import { preview } from 'vite';
import { CHROMIUM_FLAGS, findChromium } from '../../setup/chromium.mjs';

export type { Browser, BrowserContext, CDPSession, Page } from 'playwright';

const root = join(import.meta.dirname, '../..');

/** The folder of built files that the journeys run on: `BUILT`, or `dist`. */
export const builtFolder = process.env['BUILT'] ?? join(root, 'dist');

export interface Served {
  /** With its closing slash. */
  readonly url: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

/** Serves the built files with the headers they are shipped with. A browser's store belongs to the port, too. */
export async function serveBuilt(
  options: { readonly port?: number; readonly folder?: string } = {},
): Promise<Served> {
  const outDir = options.folder ?? builtFolder;
  if (!existsSync(join(outDir, 'index.html')))
    throw new Error(`Nothing is built in ${outDir}: npm run build.`);
  const server = await preview({
    configFile: join(root, 'vite.config.ts'),
    build: { outDir },
    // Any name may be used for this machine, so that a journey can come from an insecure one.
    preview: { port: options.port ?? 0, strictPort: true, allowedHosts: true },
    logLevel: 'error',
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('The server has no port.');
  return {
    url: `http://127.0.0.1:${address.port}/`,
    port: address.port,
    close: () => server.close(),
  };
}

export interface Launch extends BrowserContextOptions {
  /** A folder to keep the browser's storage in; without one it is forgotten at `close`. */
  readonly profile?: string;
  readonly flags?: readonly string[];
}

/** A headless Chromium with one window's worth of storage; `close` ends the browser as well. */
export async function launch({ profile, flags = [], ...options }: Launch = {}): Promise<BrowserContext> {
  const settings = {
    executablePath: chromiumPath(),
    chromiumSandbox: false,
    args: [...CHROMIUM_FLAGS, ...flags],
    headless: true,
  };
  if (profile !== undefined) return chromium.launchPersistentContext(profile, { ...settings, ...options });
  const browser = await chromium.launch(settings);
  const context = await browser.newContext(options);
  context.on('close', () => void browser.close());
  return context;
}

export interface Detached {
  readonly browser: Browser;
  readonly context: BrowserContext;
  /** Ends every process of the browser at once, as a dead battery would, and waits until they are gone. */
  readonly kill: () => Promise<void>;
}

/** A Chromium in a process group of its own, to be killed in mid-write. */
export async function launchDetached(profile: string, flags: readonly string[] = []): Promise<Detached> {
  const portFile = join(profile, 'DevToolsActivePort');
  // Left behind by the run that was killed, it would name a port nobody listens on.
  rmSync(portFile, { force: true });
  const child = spawn(
    chromiumPath(),
    [
      '--headless=new',
      '--no-sandbox',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      ...CHROMIUM_FLAGS,
      ...flags,
      'about:blank',
    ],
    { detached: true, stdio: 'ignore' },
  );
  const port = await readPort(portFile, child);
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const [context] = browser.contexts();
  if (!context) throw new Error('The browser came without a context.');
  return { browser, context, kill: () => killGroup(child) };
}

/** A fresh folder for a browser's storage, and how to be rid of it. */
export function makeProfile(): { readonly profile: string; readonly remove: () => void } {
  const profile = mkdtempSync(join(tmpdir(), 'sumstitch-'));
  return {
    profile,
    remove: () => rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }),
  };
}

/** Every address that anything in the context asks for outside `origin`, collected as the journey goes on. */
export function collectForeignRequests(context: BrowserContext, origin: string): readonly string[] {
  const foreign: string[] = [];
  const home = new URL(origin).origin;
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol !== 'data:' && protocol !== 'blob:' && asked !== home) foreign.push(request.url());
  });
  return foreign;
}

async function readPort(file: string, child: ChildProcess): Promise<string> {
  for (let tries = 0; tries < 300; tries += 1) {
    const [port] = existsSync(file) ? readFileSync(file, 'utf8').split('\n') : [];
    if (port) return port;
    if (child.exitCode !== null)
      throw new Error(`Chromium ended with code ${child.exitCode} before it began.`);
    await sleep(50);
  }
  throw new Error('Chromium named no port within 15 s.');
}

async function killGroup(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  process.kill(-child.pid, 'SIGKILL');
  await gone;
}

function chromiumPath(): string {
  const path = findChromium();
  if (path === undefined) throw new Error('No Chromium was found; npm test brings one.');
  return path;
}
