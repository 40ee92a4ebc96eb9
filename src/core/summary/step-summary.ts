import type { FactId } from '../fact/fact';
import { type PromptId, parsePrompt } from '../fact/prompt';
import type { RuledSat } from '../household/history';
import type { Outcome } from '../marking/marked';
import type { TrialDay } from '../record/sat';
import type { Day } from '../record/stamp';
import { withAnswer } from './fact-summary';
import { withCardTime, withHands } from './hands-summary';
import { judgeRounds, withRound } from './round-summary';
import type { FactSummary, Summary, UntimedAnswer } from './summary';

/** One place of a sitting as marked. */
export interface MarkedAnswer {
  readonly prompt: PromptId;
  readonly outcome: Outcome;
  /** The whole fact was on the card: no answer of the child's own. */
  readonly shown: boolean;
}

// Wide enough for the last 50 answers of a set when four places in five are of other sets.
const untimedKept = 250;

/** As far apart as spoken checks can be. */
export const finishedDaysKept = 40;

type Facts = Map<FactId, FactSummary>;

/**
 * The summary with one more sitting, the next in order of day and stamp, and its places as marked. `facts` may be given to
 * be written to, as the summary's own that nobody else holds: a new map for each of ten years' sittings takes a second.
 */
export function stepSummary(
  summary: Summary,
  { sat, child, rulings }: RuledSat,
  places: readonly MarkedAnswer[],
  facts?: Facts,
): Summary {
  if (rulings.voided) return summary;
  const isOwn = !rulings.notOwnWork && sat.child === child;
  return stepWork(isOwn ? withHands(summary, sat) : summary, { sat, child, rulings }, places, facts);
}

function stepWork(
  summary: Summary,
  { sat, child, rulings }: RuledSat,
  places: readonly MarkedAnswer[],
  facts?: Facts,
): Summary {
  if (sat.purpose === 'practice') return sat.ended === 'finished' ? withPractice(summary, sat) : summary;
  if (sat.purpose === 'mending' || sat.purpose === 'lines') return summary;
  if (sat.purpose === 'cards') return rulings.notOwnWork ? summary : withRound(summary, sat, places, facts);
  const counted = sat.purpose === 'sheet' ? withSheet(summary, sat) : summary;
  if (rulings.notOwnWork) return counted;
  return withAnswers(
    withCardTime(
      withSpread(withTrialDay(counted, sat.child === child ? sat.trial : undefined), sat, child),
      sat,
    ),
    sat.day,
    sat.clock === null,
    places,
    facts,
  );
}

function withPractice(summary: Summary, { takesItself }: RuledSat['sat']): Summary {
  const way = takesItself ? { itself: true } : { done: true };
  return { ...summary, practised: { ...summary.practised, ...way } };
}

function isFinished(ended: RuledSat['sat']['ended']): boolean {
  return ended === 'finished' || ended === 'bell';
}

function withSheet(summary: Summary, { day, ended, lookBack }: RuledSat['sat']): Summary {
  const { lookBacks, finishedDays } = summary;
  if (!isFinished(ended) || finishedDays.at(-1) === day) return { ...summary, lastSheet: day };
  const days = [...finishedDays, day].slice(-finishedDaysKept);
  const counted = { ...summary, lastSheet: day, finishedDays: days };
  if (!lookBack) {
    const since = lookBacks.since + 1;
    return { ...counted, finished: summary.finished + 1, lookBacks: { ...lookBacks, since } };
  }
  return { ...counted, lookBacks: { finished: lookBacks.finished + 1, since: 0 } };
}

/** A day of a trial that was ruled out, or that another child sat, is not sat: it comes again. */
function withTrialDay(summary: Summary, sat: TrialDay | undefined): Summary {
  if (!sat) return summary;
  const before = summary.trial?.trial === sat.trial ? summary.trial.days : [];
  return { ...summary, trial: { trial: sat.trial, days: [...new Set([...before, sat.day])] } };
}

/** A half broken off comes again, and so does one that another child sat. */
function withSpread(summary: Summary, { spread, ended, child: by }: RuledSat['sat'], child: string): Summary {
  if (!spread || ended !== 'finished' || by !== child) return summary;
  const before = summary.spread?.spread === spread.spread ? summary.spread.parts : [];
  return { ...summary, spread: { spread: spread.spread, parts: [...new Set([...before, spread.part])] } };
}

function withAnswers(
  summary: Summary,
  day: Day,
  untimed: boolean,
  places: readonly MarkedAnswer[],
  facts: Facts = new Map(summary.facts),
): Summary {
  const { shownOn } = summary;
  const shownToday = new Set(shownOn?.day === day ? shownOn.facts : []);
  const answers: UntimedAnswer[] = [];
  for (const { prompt, outcome, shown } of places) {
    const asked = parsePrompt(prompt);
    const fact = asked?.kind === 'fact' ? asked.id : null;
    if (!fact || shown || outcome === 'notReached' || outcome === 'unfinished') continue;
    const right = outcome === 'right';
    facts.set(fact, withAnswer(facts.get(fact), day, right, shownToday.has(fact)));
    answers.push([fact, right]);
  }
  return {
    ...summary,
    facts,
    untimed: [...summary.untimed, ...(untimed ? answers : [])].slice(-untimedKept),
    rounds: judgeRounds(summary.rounds, day, answers),
  };
}
