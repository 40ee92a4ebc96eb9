import type { Day } from '../../core/record/stamp';
import type { ReadSat } from '../../readings/child-log/child-log';
import { isPlainSheet } from '../../readings/rates/conditions';

/** A sheet that was left before its end: how many were right, of how many. In no line, since it says little. */
export interface InterruptedSheet {
  readonly day: Day;
  readonly value: number;
  readonly length: number;
}

/** The interrupted sheets of a kind, oldest first; second ones of a day are left out as among the whole ones. */
export function interruptedSheets(sats: readonly ReadSat[], withClock: boolean): readonly InterruptedSheet[] {
  return sats.flatMap(({ ruled: { sat }, marked, counts }) => {
    const isOfKind = isPlainSheet(sat) && counts && !sat.second && (sat.clock !== null) === withClock;
    const isCutShort = withClock ? marked.interrupted : sat.ended !== 'finished';
    if (!isOfKind || !isCutShort) return [];
    const value = withClock ? marked.rightByBell : marked.right;
    return [{ day: sat.day, value, length: marked.places.length }];
  });
}
