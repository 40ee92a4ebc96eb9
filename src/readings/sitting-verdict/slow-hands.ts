import { type Band, bands, scaleLimit } from '../../core/marking/band';
import { digitsOf } from '../../core/sitting/answer';
import { quickMs } from '../facts/pace';
import { type Fairness, keypadFairness, type SheetToKey } from '../hand-time/keypad-fairness';
import type { Sheet } from './sheet';
import type { SlowHands } from './verdict';

type Keyed = Pick<Sheet, 'sat' | 'read' | 'hand'>;

/** From this share of the allowance on it is the keying that fills it (our own decision, no source). */
const mostShare = 0.6;

/** What these hands could enter by the bell of a timed sheet, each answer thought of so long; `null` if unknown. */
export function keypadOf({ sat, read, hand }: Keyed, thinkMs = 0): Fairness | null {
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

/**
 * Thought of quickly, but keyed so slowly that keying fills most of the allowance: with the child's own think times
 * the band above can't be reached, and with longer allowance it can.
 */
export function slowHands(sheet: Sheet): SlowHands | null {
  const { band, isShort, read, sat, hand, thinkMs } = sheet;
  const above = band === null ? undefined : bands[bands.indexOf(band) - 1];
  if (!isShort || !above || above === 'thin' || !sat.clock || !hand || thinkMs === null || thinkMs >= quickMs)
    return null;
  const [alone, thinking] = [keypadOf(sheet), keypadOf(sheet, thinkMs)];
  if (!alone || !thinking) return null;
  const keyedMs = (sat.clock.allowanceMs / Math.max(1, alone.mostAnswers)) * read.marked.reached;
  const needed = neededFor(above, sheet);
  if (needed <= thinking.mostAnswers || keyedMs < mostShare * sat.clock.allowanceMs) return null;
  return {
    name: 'slowHands',
    mostAnswers: alone.mostAnswers,
    needed,
    band: above,
    keyedShare: Math.min(1, keyedMs / sat.clock.allowanceMs),
    restoringS: thinking.restoringS,
  };
}

function neededFor(band: Exclude<Band, 'thin'>, { read }: Sheet): number {
  return scaleLimit(read.marked.limits[band], read.marked.places.length);
}
