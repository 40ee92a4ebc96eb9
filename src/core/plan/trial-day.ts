import type { Trial } from '../household/household';
import type { DayChange, TrialKind } from '../record/household-record';
import type { TrialDay } from '../record/sat';
import type { Id } from '../record/stamp';
import type { Summary } from '../summary/summary';

/** What decides whether today is a day of a clock trial. */
export interface TrialSource {
  readonly trial: Trial | null;
  readonly set: { readonly id: Id } | null;
  readonly change: DayChange;
  readonly summary: Pick<Summary, 'trial'>;
}

/** Which days of a trial have been sat; a day missed is no day. */
export function trialDaysSat(trial: Trial, summary: Pick<Summary, 'trial'>): readonly number[] {
  return summary.trial?.trial === trial.id ? summary.trial.days : [];
}

/** The first day of a trial that has not been sat, from 0; `null` when all have. */
function nextDay(trial: Trial, summary: Pick<Summary, 'trial'>): number | null {
  const sat = new Set(trialDaysSat(trial, summary));
  const day = trial.order.findIndex((_, index) => !sat.has(index));
  return day < 0 ? null : day;
}

/** Whether a trial of the current set goes on: neither stopped nor sat to its end. */
export function isTrialOn({ trial, set, summary }: Omit<TrialSource, 'change'>): boolean {
  return trial !== null && !trial.isStopped && trial.set === set?.id && nextDay(trial, summary) !== null;
}

/** A day of the trial as it was drawn. */
export interface DrawnDay {
  readonly kind: TrialKind;
  readonly sat: TrialDay;
}

/** What was drawn for the next day of a trial that goes on, whatever the parent changes for today. */
export function drawnDay(source: Omit<TrialSource, 'change'>): DrawnDay | null {
  const { trial, summary } = source;
  if (!trial || !isTrialOn(source)) return null;
  const day = nextDay(trial, summary);
  const kind = day === null ? undefined : trial.order[day];
  return kind === undefined || day === null ? null : { kind, sat: { trial: trial.id, day } };
}

/**
 * Today as a day of the trial. `null` without one, and where the parent wants another clock than was drawn: what is
 * changed for today wins, and the day is missed.
 */
export function trialDayOf(source: TrialSource): DrawnDay | null {
  const drawn = drawnDay(source);
  const { timed } = source.change;
  return drawn && timed !== undefined && timed !== (drawn.kind === 'thread') ? null : drawn;
}
