import { seedFor } from '../core/plan/seed';
import type { LogRecord } from '../core/record/record';
import { boatDevice, type Day, type Id } from '../core/record/stamp';
import { type Aboard, createAboard } from './aboard';
import { type BoatLog, createBoatLog } from './boat-log';
import { makeChance } from './chance';
import { juniper } from './juniper';
import { sitHalfMorning, sitMorning } from './mornings';
import { settingUp } from './parent-acts';
import { createRule } from './parent-rulings';
import { dayBefore, schoolDays } from './school-days';
import { teo } from './teo';
import { utc, wallMs, type ZoneAt } from './wall-clock';
import { wren } from './wren';

/** The demo household's log. */
export interface Boat {
  readonly device: Id;
  readonly records: readonly LogRecord[];
}

const crew = [wren, teo, juniper] as const;

/** Eight weeks on the boat up to yesterday, and this morning: the same for the same day, seed and zone. */
export function makeBoat(today: Day, seed: number, zoneAt: ZoneAt = utc): Boat {
  const days = schoolDays(today);
  const ids = makeChance(seedFor(`${seed}`, today, 'ids', 0));
  const device = boatDevice;
  const log = createBoatLog(device, ids);
  const rule = createRule();
  const setUpAt = wallMs(dayBefore(days[0] ?? today), 19, 30, zoneAt);
  for (const [index, draft] of crew.flatMap(settingUp).entries()) log.add(draft, setUpAt + index * 25_000);

  const aboard = crew.map((member) =>
    createAboard(member, log, (what) => seedFor(`${seed}/${member.name}`, today, what, 0), zoneAt),
  );
  for (const [nth, day] of days.entries()) {
    const daysLeft = days.length - 1 - nth;
    const here = aboard.filter(({ member }) => !member.misses.includes(nth));
    for (const one of here) one.open(day, daysLeft === 0);
    if (daysLeft === 0) sitToday(here, log, nth);
    else
      for (const one of here) {
        const sheet = sitMorning(one, log, nth);
        if (sheet) rule(log, one.member, nth, sheet, one.days.nowMs());
      }
    if (daysLeft > 0) for (const one of here) one.close(day, daysLeft);
  }
  return { device, records: log.records };
}

/** Wren is through, Teo is in the middle of his rows, Juniper has not begun. */
function sitToday(here: readonly Aboard[], log: BoatLog, nth: number): void {
  for (const one of here) {
    if (one.member === wren) sitMorning(one, log, nth);
    if (one.member === teo) sitHalfMorning(one);
  }
}
