import {
  addDays,
  differenceInCalendarWeeks,
  eachDayOfInterval,
  formatISO,
  isWeekend,
  parseISO,
  subDays,
  subWeeks,
} from 'date-fns';
import type { Day } from '../core/record/stamp';
import { calendar } from './assumptions';

/** The boat's school days of the eight weeks up to yesterday, then today; see `calendar` for what is left out. */
export function schoolDays(today: Day): readonly Day[] {
  const now = parseISO(today);
  const first = subWeeks(now, calendar.weeks);
  const inHoliday = (day: Date) =>
    differenceInCalendarWeeks(now, day, { weekStartsOn: 1 }) === calendar.holidayWeek;
  const past = eachDayOfInterval({ start: first, end: subDays(now, 1) });
  return [...past.filter((day) => !isWeekend(day) && !inHoliday(day)), now].map(dayOf);
}

/** The day before, on which the parent sets everything up. */
export function dayBefore(day: Day): Day {
  return dayOf(addDays(parseISO(day), -1));
}

function dayOf(date: Date): Day {
  return formatISO(date, { representation: 'date' });
}
