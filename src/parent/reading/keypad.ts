import { digitsOf } from '../../core/sitting/answer';
import { dayNumber } from '../../readings/day-number';
import type { Fairness } from '../../readings/hand-time/keypad-fairness';
import { keypadFairness } from '../../readings/hand-time/keypad-fairness';
import type { ChildReading } from './child-reading';

/** Hands measured longer ago than this, in days, say little of the hands of today. */
const freshDays = 60;

/**
 * Whether every band is within reach of these hands in the child's allowance, on a sheet like the last one and in the way
 * it was keyed; `null` without a sheet, or where the hands were never measured or long ago.
 */
export function keypadNow({ log, child }: ChildReading): Fairness | null {
  const { settings } = child;
  const last = log.sats.findLast(({ ruled, answers }) => ruled.sat.purpose === 'sheet' && answers.length > 0);
  const practice = log.sats.findLast(({ ruled }) => ruled.sat.purpose === 'practice');
  const via = last?.answers[0]?.via;
  if (!last || !practice || via === undefined || via === 'paper') return null;
  const { sat } = last.ruled;
  if (dayNumber(sat.day) - dayNumber(practice.ruled.sat.day) > freshDays) return null;
  const hand = log.handsThen(sat.device, via, sat.day);
  if (!hand?.isEnough) return null;
  return keypadFairness(
    {
      hand,
      digits: sat.prompts.map(digitsOf),
      takesItself: settings.takesItself,
      limits: settings.limits,
      thinkMs: 0,
    },
    settings.allowanceS * 1000,
  );
}
