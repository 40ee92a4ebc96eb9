import type { Day } from '../../core/record/stamp';
import { dayNumber } from '../../readings/day-number';
import type { Stretch } from '../../readings/rates/trend';

/** How far back from the newest sitting a page looks, in days; `null` for all there is. */
export type Span = 84 | 365 | null;

/** Whether a day lies within a span that ends with the newest day. */
export function isWithin(span: Span, newest: Day): (day: Day) => boolean {
  const since = span === null ? Number.NEGATIVE_INFINITY : dayNumber(newest) - span;
  return (day) => dayNumber(day) > since;
}

/** The part of each stretch within a span; a line that began before it is the same line, cut off. */
export function cutStretches(
  stretches: readonly Stretch[],
  isShown: (day: Day) => boolean,
): readonly Stretch[] {
  return stretches.flatMap((stretch) => {
    const points = stretch.points.filter(({ day }) => isShown(day));
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const { line } = stretch;
    const days = dayNumber(last.day) - dayNumber(first.day);
    return [{ ...stretch, points, line: line && { ...line, first: line.last - (line.perWeek * days) / 7 } }];
  });
}
