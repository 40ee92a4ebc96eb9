import type { GateData } from './gate-data';

/** Wrong tries that cost no wait. */
const freeTries = 2;

/** No wait is longer than this, ms. */
export const longestWaitMs = 60_000;

/** How long to wait after so many wrong tries running, ms: nothing after two, then 2 s, 4 s, 8 s … up to 60 s. */
export function waitAfterMs(tries: number): number {
  if (tries <= freeTries) return 0;
  return Math.min(longestWaitMs, 1000 * 2 ** (tries - freeTries));
}

/** The wait that stands when the page opens: the whole of an unserved one, however much had run before. */
export function waitAtOpeningMs(data: GateData): number {
  return data.waitDue ? waitAfterMs(data.tries) : 0;
}
