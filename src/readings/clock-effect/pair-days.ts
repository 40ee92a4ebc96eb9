import { mean } from 'simple-statistics';
import type { FactId } from '../../core/fact/fact';
import type { Day } from '../../core/record/stamp';
import { dayNumber } from '../day-number';
import { median } from '../statistics/robust-spread';
import type { Meeting } from './meeting';

/** One fact on one day of one kind: the share right of what has a say, and the median of the natural logs of its times in ms. */
export interface FactDay {
  readonly fact: FactId;
  readonly day: Day;
  /** The day as a count, for differences only. */
  readonly dayCount: number;
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
  return linesOf(meetings).flatMap((line) => pairsOf(factDaysOf(line), windowDays));
}

/** The days of one fact in one place: of each what was met with the clock, or without, by a number for the two. */
type Line = Map<number, Meeting[]>;

/** In the order of each line's first meeting. Numbers for keys: looks over many years ask for a million of them. */
function linesOf(meetings: readonly Meeting[]): readonly Line[] {
  const lines: Line[] = [];
  const byFact = new Map<FactId, Map<string, Line>>();
  for (const meeting of meetings) {
    let byPlace = byFact.get(meeting.fact);
    if (!byPlace) {
      byPlace = new Map();
      byFact.set(meeting.fact, byPlace);
    }
    let line = byPlace.get(meeting.where);
    if (!line) {
      line = new Map();
      byPlace.set(meeting.where, line);
      lines.push(line);
    }
    const at = 2 * dayNumber(meeting.day) + Number(meeting.withClock);
    const own = line.get(at);
    if (own) own.push(meeting);
    else line.set(at, [meeting]);
  }
  return lines;
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
  return Math.abs(one.dayCount - other.dayCount);
}

/** The days of one fact in one place, oldest first. */
function factDaysOf(line: Line): readonly FactDay[] {
  return [...line].sort(([x], [y]) => x - y).flatMap(([, group]) => factDayOf(group) ?? []);
}

function factDayOf(group: readonly Meeting[]): FactDay | null {
  const [first] = group;
  if (!first) return null;
  const { fact, day, withClock } = first;
  const logs = group.flatMap(({ firstKeyMs }) => (firstKeyMs === null ? [] : [Math.log(firstKeyMs)]));
  const said = group.flatMap(({ right }) => (right === null ? [] : [Number(right)]));
  const share = said.length === 0 ? null : mean(said);
  return { fact, day, dayCount: dayNumber(day), withClock, share, logMs: median(logs) };
}
