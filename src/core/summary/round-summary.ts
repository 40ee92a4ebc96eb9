import { type FactId, parseFact } from '../fact/fact';
import type { Sat } from '../record/sat';
import type { Day } from '../record/stamp';
import { withAnswer } from './fact-summary';
import type { MarkedAnswer } from './step-summary';
import type { FactSummary, RoundSummary, Summary, UntimedAnswer } from './summary';

const roundDaysKept = 5;

/**
 * The summary with a card round: a fact's first own answer of the day is a first try like one on a sheet, and judges
 * the earlier rounds; its new facts, as far as the child came, wait to be asked on a later day; and what was shown
 * whole, as new or after a miss, is kept.
 */
export function withRound(
  summary: Summary,
  { day, shownFirst = [] }: Pick<Sat, 'day' | 'shownFirst'>,
  places: readonly MarkedAnswer[],
  facts: Map<FactId, FactSummary> = new Map(summary.facts),
): Summary {
  const taught = new Set<FactId>();
  const shown = new Set<FactId>(summary.shownOn?.day === day ? summary.shownOn.facts : []);
  const answers: UntimedAnswer[] = [];
  for (const [place, { prompt, outcome, shown: isShown }] of places.entries()) {
    const fact = parseFact(prompt)?.id;
    if (!fact || outcome === 'notReached') continue;
    if (shownFirst.includes(place)) taught.add(fact);
    else if (!shown.has(fact) && outcome !== 'unfinished')
      answers.push([fact, outcome === 'right' && !isShown]);
    if (isShown || taught.has(fact)) shown.add(fact);
  }
  const rounds = withTaught(judgeRounds(summary.rounds, day, answers), day, [...taught]);
  const first = new Map(answers.toReversed());
  for (const [fact, right] of first) {
    const before = facts.get(fact);
    if (before?.lastSeen !== day) facts.set(fact, withAnswer(before, day, right, false));
  }
  return { ...summary, facts, rounds, shownOn: { day, facts: [...shown] } };
}

function withTaught(
  rounds: readonly RoundSummary[],
  day: Day,
  taught: readonly FactId[],
): readonly RoundSummary[] {
  if (taught.length === 0) return rounds;
  const last = rounds.at(-1);
  const isSameDay = last?.day === day;
  const today = isSameDay ? last : { day, waiting: [], taken: 0, missed: [] };
  const waiting = [...new Set([...today.waiting, ...taught])];
  return [...(isSameDay ? rounds.slice(0, -1) : rounds), { ...today, waiting }].slice(-roundDaysKept);
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
