import type { DayChange } from '../core/record/household-record';
import type { SittingPlan } from '../core/record/sat';
import type { Day } from '../core/record/stamp';
import { dayFacts } from '../state/day-facts';
import type { BoatLog } from './boat-log';
import { makeChance } from './chance';
import { type ChildDays, createChildDays } from './child-days';
import { createClockDraw } from './clock-draw';
import type { CrewMember, PlannedMishap } from './crew';
import { evening } from './parent-acts';
import { wallMs, type ZoneAt } from './wall-clock';

/** A child among the crew, as the days go by. */
export interface Aboard {
  readonly member: CrewMember;
  readonly days: ChildDays;
  /** Opens a school day; the parent may take its clock away. */
  open(day: Day, isToday: boolean): void;
  /** What comes between on a sheet, if anything does. */
  mishapOn(plan: SittingPlan, nth: number): PlannedMishap | null;
  /** What the parent does in the evening; `daysLeft` counts the school days to come. */
  close(day: Day, daysLeft: number): void;
}

export function createAboard(
  member: CrewMember,
  log: BoatLog,
  seedOf: (what: string) => number,
  zoneAt: ZoneAt,
): Aboard {
  const days = createChildDays(member, log, makeChance(seedOf('answers')), zoneAt);
  const draw = createClockDraw(makeChance(seedOf('clock')));
  const facts = () => dayFacts(log.household(), member.id);
  const mishaps = new Set(member.mishaps);
  let daysOnSet = 0;

  /** Today the clock stays, and the look-back is handed on, so that a visitor can sit a sheet with the clock. */
  function changeFor(isToday: boolean): DayChange | null {
    if (!facts().settings.timed) return null;
    if (isToday) return isLookBack() ? { later: ['lookBack'] } : null;
    return member.clock !== 'everyOtherDay' || isLookBack() || draw.next() ? null : { timed: false };
  }

  function isLookBack(): boolean {
    return days.plan().steps.some((step) => step.what === 'sheet' && step.plan.lookBack);
  }

  return {
    member,
    days,
    open(day, isToday) {
      const [hours, minutes] = member.sitsAt;
      days.begin(day, wallMs(day, hours, minutes, zoneAt));
      const change = changeFor(isToday);
      if (!change) return;
      log.add({ kind: 'dayChanged', child: member.id, day, change }, wallMs(day, 8, 15, zoneAt));
      days.change(change);
    },
    mishapOn({ clock }, nth) {
      const kind = clock ? 'timed' : 'untimed';
      const due = [...mishaps].find(({ fromDay, on }) => fromDay <= nth && on === kind) ?? null;
      if (due) mishaps.delete(due);
      return due;
    },
    close(day, daysLeft) {
      daysOnSet += 1;
      const { settings, set } = facts();
      if (!set) return;
      const drafts = evening(member, { summary: days.summary(), settings, set, daysOnSet, daysLeft });
      const [hour, minute] = member.sitsAt;
      drafts.forEach((draft, index) => {
        log.add(draft, wallMs(day, hour + 10, minute, zoneAt) + index * 20_000);
      });
      if (drafts.some(({ kind }) => kind === 'setStarted')) daysOnSet = 0;
    },
  };
}
