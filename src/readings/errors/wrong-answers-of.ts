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
  const asked = sat.visits.filter((visit) => isDeciding(visit) && !visit.shown);
  const taking = sat.takesItself && sat.clock !== null ? 'itself' : 'done';
  return asked.flatMap((visit, index) => {
    const { place, given } = visit;
    const fact = knownFact(sat.prompts[place] ?? '');
    if (!fact || (visit.end === 'taken' && given === null)) return [];
    if (isRight(fact.id, given) || rulings.accepted.has(place)) return [];
    if (asked.findLastIndex((other) => other.place === place) !== index) return [];
    const before = asked[index - 1]?.given ?? null;
    return [
      {
        place,
        fact,
        given,
        firstKeyMs: firstKeyMs(visit),
        before: before === null ? null : Number(before),
        pad: padOf(sat, visit, keypad),
        reach,
        taking,
      },
    ];
  });
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
