import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type BrowserContext, builtFolder, launch, type Page } from './browser';

// A host that knows nothing of this app: no headers of ours, a folder of its own choosing, other things around it.
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};
const folder = '/our/own/sheets/';

let server: Server;
let address: string;
let context: BrowserContext;

beforeEach(async () => {
  server = createServer(async (request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    const file = path.startsWith(folder) ? path.slice(folder.length) || 'index.html' : '';
    try {
      const body = await readFile(join(builtFolder, file));
      response
        .writeHead(200, { 'Content-Type': types[extname(file)] ?? 'application/octet-stream' })
        .end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  if (at === null || typeof at === 'string') throw new Error('The server has no port.');
  address = `http://127.0.0.1:${at.port}${folder}`;
  context = await launch();
});
afterEach(async () => {
  await context.close();
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
});

test('the second load is isolated, in a folder of a host that sends no headers', async () => {
  const page = await context.newPage();
  const first = await page.goto(address);
  expect(first?.headers()).not.toHaveProperty('cross-origin-opener-policy');
  // The app reloads by itself, once, as soon as its worker can send the headers.
  await page.waitForFunction(() => crossOriginIsolated);
});

test('the page itself refuses inline script and any request to another origin', async () => {
  const page = await visit();
  const refused = await page.evaluate(async () => {
    const directives: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) =>
      directives.push(event.effectiveDirective),
    );
    const script = document.createElement('script');
    script.textContent = 'document.title = "inline"';
    document.head.append(script);
    await fetch('http://elsewhere.example/').catch(() => undefined);
    const image = document.createElement('img');
    image.src = 'http://elsewhere.example/pixel.png';
    await new Promise((resolve) => image.addEventListener('error', resolve));
    return directives;
  });
  // Twice each: by the page's own policy, and by the one its worker sends.
  expect([...new Set(refused)]).toEqual(['script-src-elem', 'connect-src', 'img-src']);
  expect(await page.title()).toBe('Sumstitch');
});

async function visit(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => crossOriginIsolated);
  return page;
}
