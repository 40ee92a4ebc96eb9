import { activeTimes } from '../../core/marking/active-time';
import type { Day } from '../../core/record/stamp';
import type { ReadSat } from '../../readings/child-log/child-log';
import { groupBy } from '../../readings/group-by';

/** How long a child sat on a day, sheets, rows and corrections together, time away left out; minutes. */
export interface DayMinutes {
  readonly day: Day;
  readonly minutes: number;
  readonly sittings: number;
}

/** Minutes of each day with a sitting whose times were kept. */
export function minutesADay(sats: readonly ReadSat[]): readonly DayMinutes[] {
  const timed = sats.flatMap(({ ruled: { sat } }) => {
    const ms = activeTimes(sat).at(-1);
    return ms === undefined || ms === null ? [] : [{ day: sat.day, ms }];
  });
  return groupBy(timed, ({ day }) => day).map((own) => ({
    day: own[0]?.day ?? '',
    minutes: own.reduce((sum, { ms }) => sum + ms, 0) / 60_000,
    sittings: own.length,
  }));
}
