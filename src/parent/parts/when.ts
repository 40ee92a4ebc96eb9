import { format, parseISO } from 'date-fns';
import type { Day } from '../../core/record/stamp';

/** `Wednesday 25 November 2026`. */
export function longDay(day: Day): string {
  return format(parseISO(day), 'EEEE d MMMM yyyy');
}

/** `Wed 25 Nov 2026`. */
export function shortDay(day: Day): string {
  return format(parseISO(day), 'EEE d MMM yyyy');
}

/** `1.4 s`; to a tenth of a second, as the clock of most browsers is no finer for a finger. */
export function secondsText(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}

/** `4 min`, at least one. */
export function minutesText(ms: number): string {
  return `${Math.max(1, Math.round(ms / 60_000))} min`;
}
