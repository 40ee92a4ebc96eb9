import { knownFact, type Reach } from '../../core/fact/fact-list';
import type { RuledSat } from '../../core/household/history';
import type { Visit } from '../../core/record/sat';
import type { ChildSettings } from '../../core/record/settings';
import { isRight } from '../../core/sitting/answer';
import { isDeciding } from '../../core/sitting/turn';
import { isDigit, ownKeys } from '../hand-time/digit-gaps';
import type { Taking } from './lift';
import type { Pad } from './pad';
import type { WrongAnswer } from './read-error';

/** A wrong answer and where it stands in its sitting. */
export type PlacedError = WrongAnswer & { readonly place: number; readonly taking: Taking };

/**
 * What was wrong or skipped in a sitting, in the order of its cards: of each place the last answer that decided it
 * before the fact was shown, unless the parent accepted it. `keypad` is the child's own pad; digits from a keyboard are read by the keyboard's keys.
 * Wrong on paper without what was written looks like nothing, and is left out.
 */
export function wrongAnswersOf(
  { sat, rulings }: Pick<RuledSat, 'sat' | 'rulings'>,
  keypad: ChildSettings['keypad'],
  reach: Reach,
): readonly PlacedError[] {
  const taking = sat.takesItself && sat.clock !== null ? 'itself' : 'done';
  const last = lastOfPlaces(sat.visits);
  const errors: PlacedError[] = [];
  let before: string | null = null;
  for (const visit of sat.visits) {
    if (!isAsked(visit)) continue;
    const { place, given } = visit;
    const gaveBefore = before;
    before = given;
    if (last[place] !== visit || (visit.end === 'taken' && given === null)) continue;
    const prompt = sat.prompts[place];
    if (isRight(prompt, given) || rulings.accepted.has(place)) continue;
    const fact = knownFact(prompt ?? '');
    if (!fact) continue;
    errors.push({
      place,
      fact,
      given,
      firstKeyMs: firstKeyMs(visit),
      before: gaveBefore === null ? null : Number(gaveBefore),
      pad: padOf(sat, visit, keypad),
      reach,
      taking,
    });
  }
  return errors;
}

function isAsked(visit: Visit): boolean {
  return isDeciding(visit) && !visit.shown;
}

/** Of each place the last visit that asked it. */
function lastOfPlaces(visits: readonly Visit[]): readonly (Visit | undefined)[] {
  const last: (Visit | undefined)[] = [];
  for (const visit of visits) if (isAsked(visit)) last[visit.place] = visit;
  return last;
}

function padOf({ paper }: RuledSat['sat'], visit: Visit, keypad: ChildSettings['keypad']): Pad {
  if (paper) return 'pencil';
  return ownKeys(visit).some(([, , via]) => via === 'keys') ? 'keyboard' : keypad;
}

/** A card opened again holds digits already: its first key is no first key. */
function firstKeyMs(visit: Visit): number | null {
  const first = ownKeys(visit).find(isDigit)?.[1] ?? null;
  return first === null || visit.onsetMs === null || visit.from !== undefined ? null : first - visit.onsetMs;
}
