import { type Band, bands, scaleLimit } from '../../core/marking/band';
import { digitsOf } from '../../core/sitting/answer';
import { type Fairness, keypadFairness } from '../hand-time/keypad-fairness';
import type { Sheet } from './sheet';
import type { SlowHands } from './verdict';

/** What these hands could enter by the bell of a timed sheet if nothing had to be thought; `null` without a hand time. */
export function keypadOf({ sat, read, hand }: Pick<Sheet, 'sat' | 'read' | 'hand'>): Fairness | null {
  if (!sat.clock || !hand?.isEnough) return null;
  const { takesItself, clock, prompts } = sat;
  const sheet = { hand, digits: prompts.map(digitsOf), takesItself, limits: read.marked.limits, thinkMs: 0 };
  return keypadFairness(sheet, clock.allowanceMs);
}

/** Whether the hands alone keep the count from the band above. */
export function slowHands(sheet: Sheet): SlowHands | null {
  const { band, isShort, read } = sheet;
  const above = band === null ? undefined : bands[bands.indexOf(band) - 1];
  if (!isShort || !above || above === 'thin') return null;
  const keypad = keypadOf(sheet);
  if (!keypad) return null;
  const { mostAnswers, restoringS } = keypad;
  const needed = neededFor(above, sheet);
  if (needed <= mostAnswers || read.marked.places.length === 0) return null;
  return { name: 'slowHands', mostAnswers, needed, band: above, restoringS };
}

function neededFor(band: Exclude<Band, 'thin'>, { read }: Sheet): number {
  return scaleLimit(read.marked.limits[band], read.marked.places.length);
}
