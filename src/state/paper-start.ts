import type { PaperStart } from '../core/paper/paper-sat';
import type { Day } from '../core/record/stamp';
import type { Ports } from './ports';

/** Where a day's work on paper belongs: the day as it was here, from its midnight, and no time of day. */
export function startOnPaper(day: Day, ports: Pick<Ports, 'zone'>): PaperStart {
  const startedAt = new Date(`${day}T00:00`).getTime();
  return { day, ...ports.zone(startedAt), startedAt };
}
