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
  return `${(ms / 1000).toFixed(1)}\u00a0s`;
}

/** How long a sitting took: `50 s`, from a minute and a half on `2 min`. */
export function spanText(ms: number): string {
  return ms < 90_000 ? `${Math.round(ms / 1000)}\u00a0s` : `${Math.round(ms / 60_000)}\u00a0min`;
}
