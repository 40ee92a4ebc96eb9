import type { Sat, Visit } from '../record/sat';
import { answerOf, isAnswer } from '../sitting/answer';
import { isDeciding } from '../sitting/turn';
import type { MarkedPlace, Outcome } from './marked';
import type { SatRulings } from './sat-rulings';

/** Marks every place of a sitting; `active` are the visits' ends in active time. */
export function markPlaces(
  sat: Sat,
  { accepted, slips }: SatRulings,
  active: readonly (number | null)[],
): readonly MarkedPlace[] {
  const seen: boolean[] = [];
  const deciding: number[] = [];
  sat.visits.forEach((visit, index) => {
    seen[visit.place] = true;
    if (isDeciding(visit)) deciding[visit.place] = index;
  });
  return sat.prompts.map((prompt, place) => {
    const index = deciding[place] ?? -1;
    const visit = sat.visits[index];
    const answer = answerOf(prompt);
    const outcome = outcomeOf(answer, visit, seen[place] ?? false);
    const isAccepted = outcome === 'wrong' && accepted.has(place);
    const isTaken = visit?.end === 'taken';
    return {
      place,
      prompt,
      answer,
      given: visit?.given ?? null,
      outcome: isAccepted ? 'right' : outcome,
      byBell: sat.clock !== null && isTaken && !visit.afterBell,
      firstKeyMs: firstKeyMs(visit),
      tookMs: isTaken && visit.onsetMs !== null && visit.endMs !== null ? visit.endMs - visit.onsetMs : null,
      atMs: isTaken ? (active[index] ?? null) : null,
      shown: visit?.shown ?? false,
      accepted: isAccepted,
      slip: slips.get(place) ?? null,
    };
  });
}

function outcomeOf(answer: number, visit: Visit | undefined, isSeen: boolean): Outcome {
  if (!visit) return isSeen ? 'unfinished' : 'notReached';
  if (visit.end === 'skipped') return 'skipped';
  return isAnswer(answer, visit.given) ? 'right' : 'wrong';
}

/** A card opened again is known already: the time to its first key is no thinking time. */
function firstKeyMs(visit: Visit | undefined): number | null {
  if (visit?.end !== 'taken' || visit.onsetMs === null || visit.from !== undefined) return null;
  const first = firstDigitMs(visit);
  return first === null ? null : first - visit.onsetMs;
}

function firstDigitMs({ keys }: Visit): number | null {
  const first = keys.find((press) => press[0] >= '0' && press[0] <= '9');
  return first === undefined ? null : first[1];
}
