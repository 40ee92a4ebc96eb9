/// <reference lib="webworker" />
import { headers } from './headers';

declare const self: ServiceWorkerGlobalScope;
// The build puts in what it wrote: every file by its path, and a hash over all of their contents.
declare const __BUILT__: { readonly version: string; readonly files: readonly string[] };

const built = __BUILT__;
const family = 'sumstitch-';
const current = family + built.version;

self.addEventListener('install', (event) => {
  event.waitUntil(keepAll());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOthers().then(() => self.clients.claim()));
});

// A new version waits until a page asks for it, which it does between sittings and never in one.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'take-over') event.waitUntil(takeOver());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(self.registration.scope)) return;
  event.respondWith(answer(request));
});

async function keepAll(): Promise<void> {
  const cache = await caches.open(current);
  await cache.addAll(built.files.map((file) => new Request(file, { cache: 'no-cache' })));
}

async function dropOthers(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(family) && name !== current);
  await Promise.all(old.map((name) => caches.delete(name)));
}

// A second window may be in mid-sheet and still needs its own version's files: then the new one goes on waiting.
async function takeOver(): Promise<void> {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const ours = windows.filter((window) => window.url.startsWith(self.registration.scope));
  if (ours.length <= 1) await self.skipWaiting();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(current);
  const kept =
    (await cache.match(request, { ignoreVary: true })) ??
    (request.mode === 'navigate' ? await cache.match('index.html', { ignoreVary: true }) : undefined);
  return withHeaders(kept ?? (await fetch(request)));
}

// Built anew rather than changed: a kept answer's headers are immutable, and one that was redirected on its way
// into the cache may not answer a navigation.
function withHeaders(response: Response): Response {
  const merged = new Headers(response.headers);
  for (const [name, value] of Object.entries(headers)) merged.set(name, value);
  const { status, statusText } = response;
  return new Response(status === 204 || status === 304 ? null : response.body, {
    status,
    statusText,
    headers: merged,
  });
}
