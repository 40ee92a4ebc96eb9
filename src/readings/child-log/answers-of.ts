import { parsePrompt } from '../../core/fact/prompt';
import type { Marked } from '../../core/marking/marked';
import type { Entry, Sat, Via, Visit } from '../../core/record/sat';
import type { Id } from '../../core/record/stamp';
import { isDeciding } from '../../core/sitting/turn';
import { dayNumber } from '../day-number';
import type { HandTime } from '../hand-time/hand-time';
import type { Answer } from './answer';

type HandOf = (device: Id, via: Via) => HandTime | null;

/** The child's own answers on a sheet or a row, each by the visit that decided it. */
export function answersOf(sat: Sat, marked: Marked, handOf: HandOf): readonly Answer[] {
  const deciding: (Visit | undefined)[] = [];
  for (const visit of sat.visits) if (isDeciding(visit)) deciding[visit.place] = visit;
  const hands = new Map<Via, number | null>();
  const handMs = (via: Entry) => {
    if (via === 'paper') return null;
    const known = hands.get(via);
    if (known !== undefined) return known;
    const ms = handOf(sat.device, via)?.firstKeyMs ?? null;
    hands.set(via, ms);
    return ms;
  };
  let where = '';
  let alike: readonly [Entry, Visit['onsetBy']] | null = null;
  const whereOf = (via: Entry, onsetBy: Visit['onsetBy']) => {
    // One text for a whole sitting, nearly always: three hundred thousand answers hold the same few.
    if (alike?.[0] !== via || alike[1] !== onsetBy) {
      alike = [via, onsetBy];
      // Paper is the same wherever it was entered.
      where = via === 'paper' ? via : `${sat.device} ${via} ${onsetBy}`;
    }
    return where;
  };
  const dayCount = dayNumber(sat.day);
  const answers: Answer[] = [];
  for (const one of marked.places) {
    const { place, prompt, outcome, byBell, given, firstKeyMs, shown, accepted, slip } = one;
    const visit = deciding[place];
    const asked = parsePrompt(prompt);
    const fact = asked?.kind === 'fact' ? asked.fact : null;
    if (!visit || !fact || shown || outcome === 'notReached' || outcome === 'unfinished') continue;
    const via = sat.paper ? 'paper' : (visit.keys[0]?.[2] ?? 'touch');
    answers.push({
      fact,
      sitting: sat.id,
      place,
      day: sat.day,
      dayCount,
      withClock: sat.clock !== null,
      onRow: sat.purpose === 'row',
      outcome,
      byBell,
      given,
      firstKeyMs: firstKeyMs !== null && firstKeyMs > 0 ? firstKeyMs : null,
      handMs: handMs(via),
      via,
      where: whereOf(via, visit.onsetBy),
      accepted,
      slip,
    });
  }
  return answers;
}
