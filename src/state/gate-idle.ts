/** Without a key or touch for this long the parent's side locks itself, ms. */
export const idleLimitMs = 180_000;

/** Out of sight for this long it locks too, ms: long enough to fetch a password, too short for a child to find it open. */
export const hiddenLimitMs = 30_000;

const inputs = ['keydown', 'pointerdown', 'pointermove', 'wheel', 'input'] as const;

/**
 * Calls `lock` after the limits above; answers with a function that stops the watch. Timers sleep with the
 * device, and the monotonic clock may too, so on return the larger of the two clocks' differences decides.
 */
export function watchIdle(lock: () => void, page: Document = document): () => void {
  let idleTimer: ReturnType<typeof setTimeout>;
  let hiddenTimer: ReturnType<typeof setTimeout>;
  let seen = now();
  let hidden: Instant | null = null;

  const touched = () => {
    if (sinceMs(seen) >= idleLimitMs) return lock();
    seen = now();
    clearTimeout(idleTimer);
    idleTimer = setTimeout(lock, idleLimitMs);
  };
  const turned = () => {
    clearTimeout(hiddenTimer);
    if (page.visibilityState === 'hidden') {
      hidden = now();
      hiddenTimer = setTimeout(lock, hiddenLimitMs);
    } else {
      const isLate = hidden !== null && sinceMs(hidden) >= hiddenLimitMs;
      hidden = null;
      if (isLate || sinceMs(seen) >= idleLimitMs) lock();
    }
  };

  idleTimer = setTimeout(lock, idleLimitMs);
  for (const input of inputs) page.addEventListener(input, touched, { capture: true, passive: true });
  page.addEventListener('visibilitychange', turned);
  return () => {
    clearTimeout(idleTimer);
    clearTimeout(hiddenTimer);
    for (const input of inputs) page.removeEventListener(input, touched, { capture: true });
    page.removeEventListener('visibilitychange', turned);
  };
}

interface Instant {
  readonly monotonicMs: number;
  readonly wallMs: number;
}

function now(): Instant {
  return { monotonicMs: performance.now(), wallMs: Date.now() };
}

function sinceMs(then: Instant): number {
  const at = now();
  return Math.max(at.monotonicMs - then.monotonicMs, at.wallMs - then.wallMs);
}
