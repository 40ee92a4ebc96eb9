import type { Trial } from '../../core/household/household';
import type { ChildLog, ReadSat } from '../child-log/child-log';
import { trialOrders } from './trial';
import { type TrialDay, type TrialReading, trialReading } from './trial-result';

/** The clock trial drawn last, as far as it was sat. `days` have been sat, `left` are still to come. */
export interface ReadTrial {
  readonly trial: Trial;
  readonly days: number;
  readonly left: number;
  readonly isWhole: boolean;
  readonly reading: TrialReading;
}

/** Reads a child's trial from the sheets that were sat for it; `null` where none was ever drawn. */
export function readTrial({ child, sats }: ChildLog): ReadTrial | null {
  const { trial } = child;
  if (!trial) return null;
  const byDay = new Map<number, ReadSat>();
  for (const read of sats) {
    const { trial: own, purpose, second } = read.ruled.sat;
    const isOf = own?.trial === trial.id && purpose === 'sheet' && !second && read.counts;
    if (isOf && own.day < trial.order.length && !byDay.has(own.day)) byDay.set(own.day, read);
  }
  const sat = [...byDay.keys()].sort((x, y) => x - y);
  const left = trial.order.flatMap((_, day) => (byDay.has(day) ? [] : [day]));
  // A day ruled out leaves a gap; what was sat goes with what had been drawn for it.
  const drawn = [...sat, ...left].flatMap((day) => trial.order[day] ?? []);
  const days = sat.flatMap((day) => trialDayOf(byDay.get(day)));
  return {
    trial,
    days: sat.length,
    left: left.length,
    isWhole: left.length === 0,
    reading: trialReading(trialOrders[trial.plan], drawn, days),
  };
}

function trialDayOf(read: ReadSat | undefined): readonly TrialDay[] {
  if (!read) return [];
  const answers = read.answers.map(({ fact, firstKeyMs, outcome }) => ({
    fact: fact.id,
    firstKeyMs,
    right: outcome === 'right',
  }));
  return [{ as: read.ruled.sat.clock ? 'thread' : 'noClock', answers }];
}
