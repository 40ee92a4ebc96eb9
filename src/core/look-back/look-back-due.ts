import type { Day } from '../record/stamp';
import type { LookBacks } from '../summary/summary';

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

/** Whether the look-back of that number, from 1, brings a spoken check: with every tenth sheet (common practice, no source). */
export function isSpokenWith(lookBack: number): boolean {
  return lookBack > 0 && lookBack % 2 === 0;
}

/** Whether a spoken check waits for the parent; one at most, however long. `lastSpoken`: the day of the last one held. */
export function isSpokenCheckWaiting({ spokenFrom }: LookBacks, lastSpoken: Day | null): boolean {
  return spokenFrom !== null && (lastSpoken === null || lastSpoken < spokenFrom);
}
