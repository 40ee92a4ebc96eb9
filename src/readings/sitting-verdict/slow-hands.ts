import { scaleLimit } from '../../core/marking/band';
import { digitsOf } from '../../core/sitting/answer';
import { quickMs } from '../facts/pace';
import { type Fairness, keypadFairness, type SheetToKey } from '../hand-time/keypad-fairness';
import type { Sheet } from './sheet';
import type { SlowHands } from './verdict';

type Keyed = Pick<Sheet, 'sat' | 'read' | 'hand'>;

/** From this share of the allowance on it is the keying that fills it (our own decision, no source). */
const mostShare = 0.6;

/** What these hands could enter by the bell of a timed sheet, each answer thought of so long; `null` if unknown. */
function keypadOf({ sat, read, hand }: Keyed, thinkMs = 0): Fairness | null {
  if (!sat.clock || !hand?.isEnough) return null;
  const digits = sat.prompts.map(digitsOf);
  const sheet: SheetToKey = {
    hand,
    digits,
    takesItself: sat.takesItself,
    limits: read.marked.limits,
    thinkMs,
  };
  return keypadFairness(sheet, sat.clock.allowanceMs);
}

/** The lower of the two top bands, with which the day is done. */
const wanted = 'even';

/**
 * Thought of quickly, but keyed so slowly that keying fills most of the allowance: at the child's own pace of thinking
 * the two top bands can't be reached.
 */
export function slowHands(sheet: Sheet): SlowHands | null {
  const { isShort, read, sat, thinkMs } = sheet;
  if (!isShort || !sat.clock || thinkMs === null || thinkMs >= quickMs) return null;
  const [alone, thinking] = [keypadOf(sheet), keypadOf(sheet, thinkMs)];
  if (!alone || !thinking) return null;
  const needed = scaleLimit(read.marked.limits[wanted], read.marked.places.length);
  const keyedShare = Math.min(1, read.marked.reached / Math.max(1, alone.mostAnswers));
  if (needed <= thinking.mostAnswers || keyedShare < mostShare) return null;
  return {
    name: 'slowHands',
    mostAnswers: alone.mostAnswers,
    needed,
    keyedShare,
    restoringS: thinking.restoringS,
  };
}
