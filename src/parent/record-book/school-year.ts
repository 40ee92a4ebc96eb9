import type { Day } from '../../core/record/stamp';

/** A usual name for the school year a day is in: `2026–27`, from June on the one that begins in that year. */
export function schoolYearName(day: Day): string {
  const [year = 0, month = 0] = day.split('-').map(Number);
  const first = month >= 6 ? year : year - 1;
  return `${first}–${String((first + 1) % 100).padStart(2, '0')}`;
}
