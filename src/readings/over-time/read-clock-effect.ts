import type { ChildLog } from '../child-log/child-log';
import { type ClockEffect, clockEffect } from '../clock-effect/clock-effect';
import type { Meeting } from '../clock-effect/meeting';
import { meetingsOf } from '../clock-effect/meetings-of';
import { dayNumber } from '../day-number';

/** How far back from the newest sheet the clock effect looks, in days: a child of last year is another child. */
const effectDays = 84;

/** The facts met on sheets of the last twelve weeks, for the clock effect. */
function recentMeetings({ sats }: ChildLog): readonly Meeting[] {
  const sheets = sats.filter(({ ruled, counts }) => counts && ruled.sat.purpose === 'sheet');
  const since = dayNumber(sheets.at(-1)?.ruled.sat.day ?? '') - effectDays;
  return sheets
    .filter(({ ruled }) => dayNumber(ruled.sat.day) > since)
    .flatMap(({ ruled, marked }) => meetingsOf(ruled.sat, marked));
}

/** The clock effect of the last twelve weeks, as one look. */
export function readClockEffect(log: ChildLog): ClockEffect {
  return clockEffect(recentMeetings(log));
}
