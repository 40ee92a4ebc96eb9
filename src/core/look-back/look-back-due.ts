import type { Day } from '../record/stamp';
import type { LookBacks } from '../summary/summary';

/** Every fifth sheet is a look-back, so four others stand between two of them (common practice, no source). */
const sheetsBetween = 4;

/**
 * Whether the next sheet is a look-back. Counted from the last one and not by number, so that neither a voided sheet,
 * nor days merged from another device, nor a time with nothing to look back on ever makes two follow each other.
 */
export function isLookBackDue({ since }: LookBacks): boolean {
  return since >= sheetsBetween;
}

/** Whether the look-back of that number, from 1, brings a spoken check: with every tenth sheet (common practice, no source). */
export function isSpokenWith(lookBack: number): boolean {
  return lookBack > 0 && lookBack % 2 === 0;
}

/** Whether a spoken check waits for the parent; one at most, however long. `lastSpoken`: the day of the last one held. */
export function isSpokenCheckWaiting({ spokenFrom }: LookBacks, lastSpoken: Day | null): boolean {
  return spokenFrom !== null && (lastSpoken === null || lastSpoken < spokenFrom);
}
