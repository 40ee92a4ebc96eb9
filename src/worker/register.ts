export interface WorkerNews {
  /** The page has a service worker: it works offline now, and a reload isolates it. */
  readonly onControlled: () => void;
  /** A new version is at hand and waits for `takeOver`. */
  readonly onWaiting: () => void;
}

let registration: ServiceWorkerRegistration | undefined;
let isTakingOver = false;

/** Registers the service worker; resolves to whether there is one. A browser that refuses it still works online. */
export async function registerWorker(news: WorkerNews): Promise<boolean> {
  const container = workerContainer();
  // In development there is no built list of files to keep.
  if (!container || import.meta.env.DEV) return false;
  container.addEventListener('controllerchange', () => {
    if (isTakingOver) location.reload();
    else news.onControlled();
  });
  try {
    registration = await container.register('./service-worker.js', { updateViaCache: 'none' });
  } catch {
    return false;
  }
  if (container.controller) news.onControlled();
  watch(registration, news);
  return true;
}

/** Asks for a new version, as a kiosk may stay open for weeks without the navigation that would. */
export async function lookForUpdate(): Promise<void> {
  await registration?.update().catch(() => undefined);
}

/**
 * Gives way to the waiting version and reloads with it; false if none waits. For use between sittings only.
 * With a second window open the worker declines, and nothing happens.
 */
export function takeOver(): boolean {
  const waiting = registration?.waiting;
  if (!waiting) return false;
  isTakingOver = true;
  waiting.postMessage({ type: 'take-over' });
  return true;
}

/**
 * Reloads a page of the first visit, which came without the worker's headers, so that its clock is fine enough;
 * false if there is nothing to gain or it was tried in this tab before. To be called before a first sitting.
 */
export function reloadToIsolate(): boolean {
  if (globalThis.crossOriginIsolated || !workerContainer()?.controller) return false;
  try {
    if (sessionStorage.getItem(triedKey)) return false;
    sessionStorage.setItem(triedKey, 'yes');
  } catch {
    // Without a memory of the attempt a browser that never isolates would reload for ever.
    return false;
  }
  location.reload();
  return true;
}

const triedKey = 'sumstitch-isolate';

function watch(registered: ServiceWorkerRegistration, news: WorkerNews): void {
  const tell = () => {
    if (registered.waiting && registered.active) news.onWaiting();
  };
  tell();
  registered.addEventListener('updatefound', () => {
    registered.installing?.addEventListener('statechange', tell);
  });
}

function workerContainer(): ServiceWorkerContainer | undefined {
  return 'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
}
