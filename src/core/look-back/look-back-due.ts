import type { Day } from '../record/stamp';
import type { LookBacks, Summary } from '../summary/summary';

/** Every fifth sheet is a look-back (common practice, no source). */
const usualEvery = 5;

/**
 * Whether the next sheet is a look-back. Counted from the last one and not by number, so that neither a voided sheet,
 * nor days merged from another device, nor a time with nothing to look back on ever makes two follow each other.
 * `every`: counted with the look-back itself; 0 for none.
 */
export function isLookBackDue({ since }: Pick<LookBacks, 'since'>, every = usualEvery): boolean {
  return every > 0 && since >= every - 1;
}

/**
 * Whether a spoken check waits for the parent: one at most, however long. Every tenth sheet brings one (common practice,
 * no source), look-backs counted, from the last one held. `every`: 0 for none; `lastSpoken`: the day it was held.
 */
export function isSpokenCheckWaiting(
  { finishedDays }: Pick<Summary, 'finishedDays'>,
  lastSpoken: Day | null,
  every: number,
): boolean {
  const since = finishedDays.filter((day) => lastSpoken === null || day > lastSpoken);
  return every > 0 && since.length >= every;
}
