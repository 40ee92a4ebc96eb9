import type { OwnSet } from '../household/household';
import { seedFor } from '../plan/seed';
import type { Id } from '../record/stamp';
import { teachingSets } from '../set/teaching-sets';

/** Numbers below this are the teaching sets by their place in the list; a parent's own sets have one above. */
const ownFrom = 200;
const numbers = 1000;

/** Three digits for a set: part of the code on paper, so a teaching set's number never changes. */
export function setNumber(set: Id): number {
  const at = teachingSets.findIndex(({ id }) => id === set);
  return at >= 0 ? at : ownFrom + (seedFor(set, '', 'set', 0) % (numbers - ownFrom));
}

/** The set of a number; `null` where there is none, or where two own sets share it. */
export function setOfNumber(number: number, ownSets: readonly Pick<OwnSet, 'id'>[]): Id | null {
  const teaching = teachingSets[number];
  if (teaching) return teaching.id;
  const own = ownSets.filter(({ id }) => setNumber(id) === number);
  return own.length === 1 ? (own[0]?.id ?? null) : null;
}
