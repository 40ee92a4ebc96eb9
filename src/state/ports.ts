/** The world outside: every clock, dice and timer the state layer uses comes through here. */
export interface Ports {
  /** Wall clock, ms since 1970. */
  now(): number;
  /** Monotonic clock, ms; the same time line as `event.timeStamp`. */
  monotonic(): number;
  /** A new id: letters, digits and hyphens. */
  randomId(): string;
  /** Runs `act` after about `ms`; returns what cancels it. */
  after(ms: number, act: () => void): () => void;
  /** The device's zone and its offset from UTC at a moment, in minutes east. */
  zone(atMs: number): { readonly zone: string; readonly offsetMin: number };
  /** Whether the page is cross-origin isolated, which sets the clock's step. */
  readonly isolated: boolean;
  /** What settles which of several windows has the seat; `null` where every window has one of its own. */
  readonly locks: LockManager | null;
}

/** The browser's own clocks, dice and timers. */
export const browserPorts: Ports = {
  now: () => Date.now(),
  monotonic: () => performance.now(),
  randomId: () => crypto.randomUUID(),
  after: (ms, act) => {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
  zone: (atMs) => ({
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    offsetMin: -new Date(atMs).getTimezoneOffset(),
  }),
  get isolated() {
    return globalThis.crossOriginIsolated === true;
  },
  get locks() {
    // Absent in a few older browsers.
    return navigator.locks ?? null;
  },
};
