import type { Day } from '../record/stamp';
import type { FactSummary } from '../summary/summary';
import { daysBetween, nearMemoryStrength } from './memory-strength';

/** A use on the day itself is half a day old: a day has no hours here. */
const leastAge = 0.5;

/**
 * How strongly a fact is held on a day, from the days on which the child's first answer to it was right; −Infinity
 * where none was. A day is one use however often the fact was asked: more in one sitting does not help (Rohrer &
 * Taylor 2006). Ages are counted in days, so it compares with other strengths of this function only.
 */
export function factStrength(fact: FactSummary | undefined, today: Day): number {
  const first = fact?.firstRight ?? null;
  if (!fact || first === null) return Number.NEGATIVE_INFINITY;
  const age = (day: Day) => Math.max(leastAge, daysBetween(day, today));
  return nearMemoryStrength(fact.rightDays, age(first), fact.lastRight.map(age));
}
