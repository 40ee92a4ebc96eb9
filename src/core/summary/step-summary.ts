import { parseFact } from '../fact/fact';
import type { PromptId } from '../fact/prompt';
import type { RuledSat } from '../household/history';
import type { Outcome } from '../marking/marked';
import type { TrialDay } from '../record/sat';
import type { Day } from '../record/stamp';
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
const recentKept = 8;
const rightDaysKept = 3;

/** The summary with one more sitting, the next in order of day and stamp, and its places as marked. */
export function stepSummary(
  summary: Summary,
  { sat, child, rulings }: RuledSat,
  places: readonly MarkedAnswer[],
): Summary {
  if (rulings.voided) return summary;
  if (sat.purpose === 'practice') return sat.ended === 'finished' ? withPractice(summary, sat) : summary;
  if (sat.purpose === 'mending') return summary;
  const counted = sat.purpose === 'sheet' ? withSheet(summary, sat.day, isFinished(sat.ended)) : summary;
  if (rulings.notOwnWork) return counted;
  return withAnswers(
    withTrialDay(counted, sat.child === child ? sat.trial : undefined),
    sat.day,
    sat.clock === null,
    places,
  );
}

function withPractice(summary: Summary, { takesItself }: RuledSat['sat']): Summary {
  const way = takesItself ? { itself: true } : { done: true };
  return { ...summary, practised: { ...summary.practised, ...way } };
}

function isFinished(ended: RuledSat['sat']['ended']): boolean {
  return ended === 'finished' || ended === 'bell';
}

function withSheet(summary: Summary, day: Day, finished: boolean): Summary {
  if (!finished || summary.lastFinished === day) return { ...summary, lastSheet: day };
  return { ...summary, lastSheet: day, lastFinished: day, finished: summary.finished + 1 };
}

/** A day of a trial that was ruled out, or that another child sat, is not sat: it comes again. */
function withTrialDay(summary: Summary, sat: TrialDay | undefined): Summary {
  if (!sat) return summary;
  const before = summary.trial?.trial === sat.trial ? summary.trial.days : [];
  return { ...summary, trial: { trial: sat.trial, days: [...new Set([...before, sat.day])] } };
}

function withAnswers(summary: Summary, day: Day, untimed: boolean, places: readonly MarkedAnswer[]): Summary {
  const facts = new Map(summary.facts);
  const answers: UntimedAnswer[] = [];
  for (const { prompt, outcome, shown } of places) {
    const fact = parseFact(prompt)?.id;
    if (!fact || shown || outcome === 'notReached' || outcome === 'unfinished') continue;
    const right = outcome === 'right';
    facts.set(fact, withAnswer(facts.get(fact), day, right));
    if (untimed) answers.push([fact, right]);
  }
  return { ...summary, facts, untimed: [...summary.untimed, ...answers].slice(-untimedKept) };
}

function withAnswer(before: FactSummary | undefined, day: Day, right: boolean): FactSummary {
  const rightDays = before?.rightDays ?? 0;
  const isFirstTry = before?.lastSeen !== day;
  return {
    rightDays: isFirstTry && right ? Math.min(rightDays + 1, rightDaysKept) : rightDays,
    seen: (before?.seen ?? 0) + 1,
    lastSeen: day,
    recent: ((before?.recent ?? '') + (right ? '1' : '0')).slice(-recentKept),
  };
}
