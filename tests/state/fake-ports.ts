import type { Ports } from '../../src/state/ports';

/** Clocks, timers and ids that a test moves by hand. */
export interface FakePorts extends Ports {
  /** Both clocks go on, and what falls due on the way runs in its order. */
  pass(ms: number): void;
  /** Sets the wall clock alone, as a person in the device's settings does. */
  setWallClock(atMs: number): void;
  /** Timers that have not run yet. */
  timers(): number;
}

let made = 0;

/** Ten in the morning of a day, local time. */
export function morningOf(day: string): number {
  return new Date(`${day}T10:00:00`).getTime();
}

/** Fake ports on the morning of a day; the ids of two of them never meet. */
export function fakePorts(day = '2026-03-02'): FakePorts {
  made += 1;
  const prefix = `p${made}`;
  let ids = 0;
  let wallMs = morningOf(day);
  let monotonicMs = 5000;
  let due: { readonly atMs: number; readonly act: () => void }[] = [];

  function move(toMs: number): void {
    wallMs += toMs - monotonicMs;
    monotonicMs = toMs;
  }

  return {
    now: () => wallMs,
    monotonic: () => monotonicMs,
    randomId: () => {
      ids += 1;
      return `${prefix}-${ids}`;
    },
    after(ms, act) {
      const timer = { atMs: monotonicMs + ms, act };
      due.push(timer);
      return () => {
        due = due.filter((other) => other !== timer);
      };
    },
    zone: () => ({ zone: 'Europe/Dublin', offsetMin: 0 }),
    isolated: true,
    locks: null,
    pass(ms) {
      const endMs = monotonicMs + ms;
      for (;;) {
        const [next] = due.filter(({ atMs }) => atMs <= endMs).toSorted((x, y) => x.atMs - y.atMs);
        if (!next) break;
        due = due.filter((other) => other !== next);
        move(Math.max(monotonicMs, next.atMs));
        next.act();
      }
      move(endMs);
    },
    setWallClock(atMs) {
      wallMs = atMs;
    },
    timers: () => due.length,
  };
}
