import { median } from '../../core/marking/median';
import { thinkOf } from '../../readings/child-log/answer';
import type { ReadSat } from '../../readings/child-log/child-log';
import { conditionsOf, isPlainSheet } from '../../readings/rates/conditions';
import { type Stretch, type TrendPoint, trendOf } from '../../readings/rates/trend';

/** Right answers of a sheet under which no usual time is given (our own decision, no source). */
const fewestTimes = 5;

/**
 * The usual think time of right answers, s, from sheet to sheet, without the clock alone: the bell cuts off answers that
 * would have come later, so times of sheets with the clock can't be set beside them.
 */
export function thinkTimes(sats: readonly ReadSat[]): readonly Stretch[] {
  return trendOf(sats.flatMap(pointOf));
}

function pointOf({ ruled, counts, answers }: ReadSat): readonly TrendPoint[] {
  const { sat } = ruled;
  if (!counts || !isPlainSheet(sat) || sat.clock || sat.second) return [];
  const times = answers.flatMap((answer) =>
    answer.outcome === 'right' && thinkOf(answer) !== null ? (thinkOf(answer) ?? []) : [],
  );
  const usual = times.length < fewestTimes ? null : median(times);
  if (usual === null) return [];
  return [{ day: sat.day, value: usual / 1000, ceiling: null, conditions: conditionsOf(sat) }];
}
