import { mean } from 'simple-statistics';
import type { FactId } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';
import { dayNumber } from '../day-number';
import { groupBy } from '../group-by';
import { median } from '../statistics/robust-spread';
import type { Meeting } from './meeting';

/** One fact on one day of one kind: the share right of what has a say, and the median of the natural logs of its times in ms. */
export interface FactDay {
  readonly fact: FactId;
  readonly day: Day;
  readonly withClock: boolean;
  readonly share: number | null;
  readonly logMs: number | null;
}

/** The same fact on a day with the clock and on one without. */
export interface DayPair {
  readonly withClock: FactDay;
  readonly without: FactDay;
}

/**
 * Pairs each fact's days with the clock to days without, nearest in time first and never more than `windowDays`
 * apart, each day once. Practice makes later days quicker, so neighbours are compared and far days are not. The
 * choice looks at dates only, never at answers.
 */
export function pairDays(meetings: readonly Meeting[], windowDays: number): readonly DayPair[] {
  return groupBy(meetings, ({ fact, where }) => `${fact} ${where}`).flatMap((group) =>
    pairsOf(factDaysOf(group), windowDays),
  );
}

/** Like brackets: a day closes the latest open day of the other kind. */
function pairsOf(days: readonly FactDay[], windowDays: number): readonly DayPair[] {
  const open: FactDay[] = [];
  const pairs: DayPair[] = [];
  for (const day of days) {
    const latest = open.at(-1);
    if (latest && latest.withClock !== day.withClock && apart(latest, day) <= windowDays) {
      open.pop();
      pairs.push(day.withClock ? { withClock: day, without: latest } : { withClock: latest, without: day });
    } else open.push(day);
  }
  return pairs;
}

function apart(one: FactDay, other: FactDay): number {
  return Math.abs(dayNumber(one.day) - dayNumber(other.day));
}

/** The days of one fact in one place, oldest first. */
function factDaysOf(meetings: readonly Meeting[]): readonly FactDay[] {
  const days = groupBy(meetings, ({ day, withClock }) => `${day} ${withClock}`);
  return days.flatMap((group) => factDayOf(group) ?? []).sort(byDay);
}

function factDayOf(group: readonly Meeting[]): FactDay | null {
  const [first] = group;
  if (!first) return null;
  const { fact, day, withClock } = first;
  const logs = group.flatMap(({ firstKeyMs }) => (firstKeyMs === null ? [] : [Math.log(firstKeyMs)]));
  const said = group.flatMap(({ right }) => (right === null ? [] : [Number(right)]));
  return { fact, day, withClock, share: said.length === 0 ? null : mean(said), logMs: median(logs) };
}

function byDay(x: FactDay, y: FactDay): number {
  return x.day < y.day ? -1 : x.day > y.day ? 1 : Number(x.withClock) - Number(y.withClock);
}
