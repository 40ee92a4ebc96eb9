import type { Day } from '../../core/record/stamp';
import { dayNumber } from '../day-number';
import type { Interval } from '../statistics/interval';
import { theilSen } from '../statistics/theil-sen';
import { type Conditions, differences } from './conditions';

/** One sitting in a trend: any rate, count or time, and the most it could have been, if anything. */
export interface TrendPoint {
  readonly day: Day;
  readonly value: number;
  readonly ceiling: number | null;
  readonly conditions: Conditions;
}

/** A slope in the value's unit a week, its interval, and the line's value on the first and last day. */
export interface TrendLine {
  readonly perWeek: number;
  readonly interval: Interval;
  readonly first: number;
  readonly last: number;
}

/** Sittings running under the same conditions. */
export interface Stretch {
  readonly points: readonly TrendPoint[];
  /** What changed since the stretch before; empty for the first. */
  readonly changed: readonly (keyof Conditions)[];
  readonly line: TrendLine | null;
  /** Why there is no line: under six sittings or all on one day, or a third of them can't have been better. */
  readonly noLine: 'tooFew' | 'ceiling' | null;
}

/** Whether a slope may as well be nothing. */
export function isFlat(interval: Interval): boolean {
  return interval.low <= 0 && interval.high >= 0;
}

/** From this share of sittings at their ceiling on, no slope is given (our own decision, no source). */
const ceilingShare = 1 / 3;

/** Breaks sittings, oldest first, wherever a condition changes, and draws a Theil–Sen line through each stretch. */
export function trendOf(points: readonly TrendPoint[]): readonly Stretch[] {
  const starts = points.flatMap((point, index) => {
    const before = points[index - 1];
    return !before || differences(before.conditions, point.conditions).length > 0 ? [index] : [];
  });
  return starts.map((start, index) => {
    const own = points.slice(start, starts[index + 1] ?? points.length);
    const [before, first] = [points[start - 1], points[start]];
    const changed = before && first ? differences(before.conditions, first.conditions) : [];
    return { points: own, changed, ...lineOf(own) };
  });
}

function lineOf(points: readonly TrendPoint[]): Pick<Stretch, 'line' | 'noLine'> {
  const days = points.map(({ day }) => dayNumber(day));
  const start = days[0] ?? 0;
  const end = days.at(-1) ?? 0;
  const line = theilSen(points.map(({ value }, index) => ({ x: (days[index] ?? 0) - start, y: value })));
  if (line === null || line.interval === null) return { line: null, noLine: 'tooFew' };
  const atCeiling = points.filter(({ value, ceiling }) => ceiling !== null && value >= ceiling).length;
  if (atCeiling >= ceilingShare * points.length) return { line: null, noLine: 'ceiling' };
  return {
    line: {
      perWeek: line.slope * 7,
      interval: { low: line.interval.low * 7, high: line.interval.high * 7 },
      first: line.intercept,
      last: line.intercept + line.slope * (end - start),
    },
    noLine: null,
  };
}
