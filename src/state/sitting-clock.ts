import type { Ports } from './ports';

/** Over a second apart, the two clocks say that the device slept or its clock was set. */
const disagreementMs = 1000;

/** One sitting's time line: ms since it began, on the monotonic clock, to the microsecond. */
export interface SittingClock {
  /** A time stamp of the page, as ms since the sitting began. */
  at(timeStamp: number): number;
  now(): number;
  /** Whether monotonic and wall clock have drifted apart since the last look; looking resets it. */
  hasJumped(): boolean;
}

/**
 * Starts a time line; `elapsedMs` is where a sitting taken up again after a reload goes on. A page's monotonic clock
 * holds within one run only, so that a run's times are differences of one clock and only the gap between runs is guessed.
 */
export function startClock(ports: Ports, elapsedMs = 0): SittingClock {
  const origin = ports.monotonic() - elapsedMs;
  let apart = ports.now() - ports.monotonic();
  return {
    at: (timeStamp) => roundToMicro(timeStamp - origin),
    now: () => roundToMicro(ports.monotonic() - origin),
    hasJumped() {
      const nowApart = ports.now() - ports.monotonic();
      const jumped = Math.abs(nowApart - apart) > disagreementMs;
      apart = nowApart;
      return jumped;
    },
  };
}

function roundToMicro(ms: number): number {
  return Math.round(ms * 1000) / 1000;
}

/** The smallest step the monotonic clock is seen to make, ms. */
export function measureClockStep(monotonic: () => number): number {
  let smallest = Number.POSITIVE_INFINITY;
  let last = monotonic();
  for (let looks = 0; looks < 2000; looks += 1) {
    const now = monotonic();
    if (now > last) smallest = Math.min(smallest, now - last);
    last = now;
  }
  return Number.isFinite(smallest) ? Number(smallest.toFixed(3)) : 0;
}
