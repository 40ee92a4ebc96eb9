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

/** What was met of a fact on one day of one kind, and what it comes to once that has been asked. */
interface Met {
  readonly meetings: Meeting[];
  factDay: FactDay | null;
}

/** The days of one fact in one place, each kind of day by a number of its own. */
type Line = Map<number, Met>;

/** Meetings by fact, place and day, growing: looks over many years ask for the same days again and again. */
export class DayLines {
  /** In the order of each line's first meeting. */
  readonly #lines: Line[] = [];
  readonly #byFact = new Map<FactId, Map<string, Line>>();

  add(meetings: readonly Meeting[]): void {
    for (const meeting of meetings) {
      const line = this.#lineOf(meeting);
      const at = 2 * dayNumber(meeting.day) + Number(meeting.withClock);
      const met = line.get(at);
      if (met) {
        met.meetings.push(meeting);
        met.factDay = null;
      } else line.set(at, { meetings: [meeting], factDay: null });
    }
  }

  /**
   * Pairs each fact's days with the clock to days without, nearest in time first and never more than `windowDays`
   * apart, each day once. Practice makes later days quicker, so neighbours are compared and far days are not. The
   * choice looks at dates only, never at answers.
   */
  pairs(windowDays: number): readonly DayPair[] {
    return this.#lines.flatMap((line) => pairsOf(factDaysOf(line), windowDays));
  }

  #lineOf({ fact, where }: Meeting): Line {
    let byPlace = this.#byFact.get(fact);
    if (!byPlace) {
      byPlace = new Map();
      this.#byFact.set(fact, byPlace);
    }
    let line = byPlace.get(where);
    if (!line) {
      line = new Map();
      byPlace.set(where, line);
      this.#lines.push(line);
    }
    return line;
  }
}

/** The pairs of days among these meetings. */
export function pairDays(meetings: readonly Meeting[], windowDays: number): readonly DayPair[] {
  const lines = new DayLines();
  lines.add(meetings);
  return lines.pairs(windowDays);
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

/** Oldest first, and of one day the kind without the clock. */
function factDaysOf(line: Line): readonly FactDay[] {
  const ats = [...line.keys()].sort((x, y) => x - y);
  return ats.flatMap((at) => {
    const met = line.get(at);
    if (!met) return [];
    met.factDay ??= factDayOf(met.meetings);
    return met.factDay ?? [];
  });
}

function factDayOf(meetings: readonly Meeting[]): FactDay | null {
  const [first, second] = meetings;
  if (!first) return null;
  const { fact, day, withClock } = first;
  const dayCount = dayNumber(day);
  if (!second) {
    const logMs = first.firstKeyMs === null ? null : Math.log(first.firstKeyMs);
    return {
      fact,
      day,
      dayCount,
      withClock,
      share: first.right === null ? null : Number(first.right),
      logMs,
    };
  }
  const logs = meetings.flatMap(({ firstKeyMs }) => (firstKeyMs === null ? [] : [Math.log(firstKeyMs)]));
  const said = meetings.flatMap(({ right }) => (right === null ? [] : [Number(right)]));
  return {
    fact,
    day,
    dayCount,
    withClock,
    share: said.length === 0 ? null : mean(said),
    logMs: median(logs),
  };
}
