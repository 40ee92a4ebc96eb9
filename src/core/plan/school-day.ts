import { daysBetween } from '../memory/memory-strength';
import type { Day } from '../record/stamp';

const aMonday = '2026-03-02';

/** The day of the week, 1 Monday to 7 Sunday (ISO 8601). */
export function weekday(day: Day): number {
  return (((daysBetween(aMonday, day) % 7) + 7) % 7) + 1;
}
