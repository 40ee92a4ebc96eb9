import type { Day } from '../../core/record/stamp';
import type { ReadSat } from '../../readings/child-log/child-log';
import { groupBy } from '../../readings/group-by';

/** How long a child sat on a day, sheets, rows and corrections together; minutes. */
export interface DayMinutes {
  readonly day: Day;
  readonly minutes: number;
  readonly sittings: number;
}

/** Minutes of each day with a sitting whose times were kept. */
export function minutesADay(sats: readonly ReadSat[]): readonly DayMinutes[] {
  const timed = sats.filter(({ ruled }) => ruled.sat.endedMs !== null);
  return groupBy(timed, ({ ruled }) => ruled.sat.day).map((own) => ({
    day: own[0]?.ruled.sat.day ?? '',
    minutes: own.reduce((sum, { ruled }) => sum + (ruled.sat.endedMs ?? 0), 0) / 60_000,
    sittings: own.length,
  }));
}
