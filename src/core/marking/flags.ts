import type { Sat, Visit } from '../record/sat';
import type { Flags } from './marked';

/** A silence on one card from which on the parent is told: our own choice, no source. */
const longSilenceMs = 20_000;

const quickMs = 300;
const quickRunning = 5;
const burstKeys = 8;
const burstMs = 1000;

/** Long silence: 20 s on a card without a key. Mashing: five answers running with the first key under 300 ms, or eight keys in a second. */
export function flagsOf(sat: Sat): Flags | null {
  if (!sat.keepTimes) return null;
  return { longSilence: sat.visits.some(hasSilence), mashing: isHasty(sat.visits) || hasBurst(sat.visits) };
}

function hasSilence(visit: Visit): boolean {
  if (visit.end === 'left') return false;
  const marks = [visit.onsetMs, ...keyTimes(visit), visit.endMs];
  return marks.some((mark, index) => {
    const before = marks[index - 1] ?? null;
    return before !== null && mark !== null && mark - before >= longSilenceMs;
  });
}

/** Times of the keys that fell while the card was up. */
function keyTimes({ keys, late = 0 }: Visit): readonly (number | null)[] {
  return keys.slice(0, keys.length - late).map(([, atMs]) => atMs);
}

function isHasty(visits: readonly Visit[]): boolean {
  let running = 0;
  for (const visit of visits) {
    if (visit.end !== 'taken') continue;
    const first = keyTimes(visit)[0] ?? null;
    const isQuick = first !== null && visit.onsetMs !== null && first - visit.onsetMs < quickMs;
    running = isQuick ? running + 1 : 0;
    if (running >= quickRunning) return true;
  }
  return false;
}

function hasBurst(visits: readonly Visit[]): boolean {
  const times: number[] = [];
  for (const { keys } of visits) for (const [, atMs] of keys) times.push(atMs ?? 0);
  // Nearly always in order already; of ten years' sittings sorting would take longer than all the rest.
  if (times.some((atMs, index) => atMs < (times[index - 1] ?? 0))) times.sort((x, y) => x - y);
  return times.some((atMs, index) => {
    const first = times[index - burstKeys + 1];
    return first !== undefined && atMs - first < burstMs;
  });
}
