import type { Day } from '../core/record/stamp';

const msADay = 86_400_000;

/** A local date as a count of days, for differences only. */
export function dayNumber(day: Day): number {
  const before = known.get(day);
  if (before !== undefined) return before;
  const count = countOf(day);
  known.set(day, count);
  return count;
}

// Ten years ask for the same few thousand days over and over.
const known = new Map<Day, number>();

function countOf(day: Day): number {
  const [year = Number.NaN, month = Number.NaN, date = Number.NaN] = day.split('-').map(Number);
  return Date.UTC(year, month - 1, date) / msADay;
}
