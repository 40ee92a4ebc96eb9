import { type FactId, parseFact } from '../fact/fact';
import type { Sat } from '../record/sat';
import type { Day } from '../record/stamp';
import type { MarkedAnswer } from './step-summary';
import type { RoundSummary, Summary, UntimedAnswer } from './summary';

const roundDaysKept = 5;

/** The summary with a card round: its new facts, as far as the child came, wait to be asked on a later day. */
export function withRound(
  summary: Summary,
  { day, shownFirst = [] }: Pick<Sat, 'day' | 'shownFirst'>,
  places: readonly MarkedAnswer[],
): Summary {
  const taught = shownFirst.flatMap((place) => {
    const met = places[place];
    const fact = met && met.outcome !== 'notReached' ? parseFact(met.prompt)?.id : undefined;
    return fact ?? [];
  });
  if (taught.length === 0) return summary;
  const last = summary.rounds.at(-1);
  const isSameDay = last?.day === day;
  const before = isSameDay ? summary.rounds.slice(0, -1) : summary.rounds;
  const today = isSameDay ? last : { day, waiting: [], taken: 0, missed: [] };
  const waiting = [...new Set([...today.waiting, ...taught])];
  return { ...summary, rounds: [...before, { ...today, waiting }].slice(-roundDaysKept) };
}

/** What answers of a day say of the rounds of earlier days: a fact's first one decides. */
export function judgeRounds(
  rounds: readonly RoundSummary[],
  day: Day,
  answers: readonly UntimedAnswer[],
): readonly RoundSummary[] {
  if (rounds.every((round) => round.waiting.length === 0 || round.day >= day)) return rounds;
  const first = new Map<FactId, boolean>();
  for (const [fact, right] of answers) if (!first.has(fact)) first.set(fact, right);
  return rounds.map((round) => {
    const asked = round.day < day ? round.waiting.filter((fact) => first.has(fact)) : [];
    if (asked.length === 0) return round;
    const missed = asked.filter((fact) => !first.get(fact));
    return {
      ...round,
      waiting: round.waiting.filter((fact) => !first.has(fact)),
      taken: round.taken + asked.length - missed.length,
      missed: [...round.missed, ...missed],
    };
  });
}
