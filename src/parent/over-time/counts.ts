import { scaleLimit } from '../../core/marking/band';
import type { ChildSettings, HouseholdSettings } from '../../core/record/settings';
import type { ReadSat } from '../../readings/child-log/child-log';
import { conditionsOf, isPlainSheet } from '../../readings/rates/conditions';
import { type Stretch, trendOf } from '../../readings/rates/trend';
import type { DayLine } from '../chart/day-chart';

/** How many were right on whole sheets without the clock, from sheet to sheet. */
export function countsAtEase(sats: readonly ReadSat[]): readonly Stretch[] {
  const whole = sats.filter(
    ({ ruled: { sat }, counts }) =>
      counts && isPlainSheet(sat) && !sat.clock && !sat.second && sat.ended === 'finished',
  );
  return trendOf(
    whole.map(({ ruled: { sat }, marked }) => ({
      day: sat.day,
      value: marked.right,
      ceiling: marked.places.length,
      conditions: conditionsOf(sat),
    })),
  );
}

/** Where the bands begin, over each run of sheets of one length; named at the end of the last. */
export function bandLines(
  stretches: readonly Stretch[],
  limits: ChildSettings['limits'],
  names: HouseholdSettings['bandNames'],
): readonly DayLine[] {
  return stretches.flatMap(({ points }, index) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const isLast = index === stretches.length - 1;
    return (['firm', 'even', 'loose'] as const).map((band): DayLine => {
      const value = scaleLimit(limits[band], first.conditions.length);
      return {
        from: { day: first.day, value },
        to: { day: last.day, value },
        kind: 'level',
        ...(isLast ? { label: names[band] } : {}),
      };
    });
  });
}
