import { formatISO, parseISO, subDays } from 'date-fns';
import type { Day } from '../../../core/record/stamp';

/** The day so many days before. */
export function daysBefore(day: Day, days: number): Day {
  return formatISO(subDays(parseISO(day), days), { representation: 'date' });
}
