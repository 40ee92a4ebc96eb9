import { knownFact } from '../../core/fact/fact-list';
import type { Marked, MarkedPlace } from '../../core/marking/marked';
import type { Sat } from '../../core/record/sat';
import { conditionsOf } from '../rates/conditions';
import type { Meeting } from './meeting';

/**
 * The facts met on a sheet that counts for the clock effect: the first sheet of a day, the child's own work, and
 * with its clock unbroken if it had one. Extra rows, mending and practice hold none.
 */
export function meetingsOf(sat: Sat, marked: Marked): readonly Meeting[] {
  const counts = marked.noBand === null || (marked.noBand === 'untimed' && sat.clock === null);
  if (sat.purpose !== 'sheet' || sat.second || !counts) return [];
  const { device, entry, onsetBy } = conditionsOf(sat);
  const where = `${device} ${entry} ${onsetBy}`;
  return marked.places.flatMap((place) => {
    const fact = knownFact(place.prompt);
    if (!fact || place.shown || !isMet(place)) return [];
    const { firstKeyMs } = place;
    return [
      {
        fact: fact.id,
        day: sat.day,
        withClock: sat.clock !== null,
        where,
        right: rightOf(sat, place),
        firstKeyMs,
      },
    ];
  });
}

function isMet({ outcome }: MarkedPlace): boolean {
  return outcome === 'right' || outcome === 'wrong' || outcome === 'skipped';
}

function rightOf({ clock }: Sat, { outcome, byBell }: MarkedPlace): boolean | null {
  if (clock !== null && outcome !== 'skipped' && !byBell) return null;
  return outcome === 'right';
}
