import type { BrowserContext, Page } from '../journeys/browser';

declare global {
  var tasks: { startMs: number; ms: number }[] | undefined;
}

/** Notes every task over 50 ms; before the page's own code. */
export function watchTasks(context: BrowserContext): Promise<unknown> {
  return context.addInitScript(() => {
    const tasks: { startMs: number; ms: number }[] = [];
    globalThis.tasks = tasks;
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries())
        tasks.push({ startMs: startTime, ms: duration });
    }).observe({ type: 'longtask', buffered: true });
  });
}

/** The tasks over 50 ms since a moment on the page's clock: how long each held it, ms. */
export function tasksSince(page: Page, sinceMs: number): Promise<readonly number[]> {
  return page.evaluate(
    (since) => (globalThis.tasks ?? []).filter(({ startMs, ms }) => startMs + ms > since).map(({ ms }) => ms),
    sinceMs,
  );
}
