import { addDays, format, getISODay, parseISO } from 'date-fns';
import type { Day } from '../../core/record/stamp';

/** The next day with school after a day, by the days of the week; the very next day where no day has any. */
export function nextSchoolDay(today: Day, schoolDays: readonly number[]): Day {
  const coming = Array.from({ length: 7 }, (_, ahead) => addDays(parseISO(today), ahead + 1));
  const next = coming.find((day) => schoolDays.includes(getISODay(day))) ?? coming[0];
  return format(next ?? parseISO(today), 'yyyy-MM-dd');
}

/** Whether the week holds no further school day: its last one, and the free days after it. */
export function isWeekOver(today: Day, schoolDays: readonly number[]): boolean {
  const now = getISODay(parseISO(today));
  return schoolDays.length > 0 && schoolDays.every((day) => day <= now);
}
