import type { Undone } from '../record/household-record';
import type { Id, Stamp } from '../record/stamp';

/** Which records have been taken back, and by what. */
export interface Undoing {
  isUndone(record: Stamp): boolean;
  undoneBy(target: Id): readonly Id[];
}

/**
 * Folds undoings, given in the log's order. An undoing counts only when it is later by its counter than what it
 * takes back, so no circle of undoings can hold, and one whose target has not arrived waits for it.
 */
export function foldUndoing(undoings: readonly Undone[]): Undoing {
  const inForce = new Map<Id, Undone[]>();
  const isUndone = (record: Stamp) => (inForce.get(record.id)?.[0]?.seq ?? -1) > record.seq;
  // From the latest back: whatever can undo an undoing has been decided before it.
  for (const undoing of undoings.toReversed()) {
    if (isUndone(undoing)) continue;
    const others = inForce.get(undoing.target);
    if (others) others.push(undoing);
    else inForce.set(undoing.target, [undoing]);
  }
  return { isUndone, undoneBy: (target) => (inForce.get(target) ?? []).map(({ id }) => id) };
}
