import { type FactId, parseFact } from '../../core/fact/fact';
import { writtenWhole } from '../../core/fact/written';
import { type ChildHistory, type History, noHistory } from '../../core/household/history';
import type { Child, Household } from '../../core/household/household';
import { markSat } from '../../core/marking/mark-sat';
import { factStrength } from '../../core/memory/fact-strength';
import { withHeard } from '../../core/memory/heard-aloud';
import { daysBetween } from '../../core/memory/memory-strength';
import { planDay } from '../../core/plan/plan-day';
import type { DayChange } from '../../core/record/household-record';
import type { Day } from '../../core/record/stamp';
import { strategyFor } from '../../core/strategy/strategy-for';
import { strategyLine } from '../../core/strategy/words';
import { workOf } from '../../core/strategy/work';
import { resumeSummary } from '../../core/summary/summarize';
import { emptySummary, type Summary } from '../../core/summary/summary';
import { dayFacts } from '../../state/day-facts';
import type { Steps } from '../reading/steps';

/** A new fact with the way to it. */
export interface NewFact {
  readonly fact: FactId;
  readonly whole: string;
  readonly line: string | null;
  readonly isOwn: boolean;
  readonly work: string;
}

/** What a school day asks of one child's teacher, as the plan and the log tell. */
export interface ToTeach {
  readonly hasSet: boolean;
  readonly hasCards: boolean;
  /** Facts of a first try that come before any teaching. */
  readonly untried: number;
  readonly isLookBack: boolean;
  readonly fresh: readonly NewFact[];
  readonly missed: readonly { readonly fact: FactId; readonly times: number }[];
  readonly faded: readonly { readonly fact: FactId; readonly days: number }[];
}

/** Days a miss is remembered on the page, days after which a fact counts as left alone, and how many of each are named. */
const missedDays = 7;
const longDays = 14;
const mostNamed = 6;

/** Sittings summed up in one step. */
const satsAStep = 100;

/** The sittings the plan itself needs: what waits from before a week is let go. */
const planDays = 31;

/** What is to be taught to a child on a day to come, from today's log; in steps, as ten years are summed up. */
export function* toTeachOn(day: Day, { household, history, child, today }: TeachSource): Steps<ToTeach> {
  const own = history.children.get(child.id) ?? noHistory;
  let summary = emptySummary;
  for (let at = 0; at < own.sittings.length; at += satsAStep) {
    summary = resumeSummary(summary, own.sittings.slice(at, at + satsAStep));
    yield;
  }
  const facts = dayFacts(household, child.id);
  const sittings = own.sittings.filter(({ sat }) => daysBetween(sat.day, today) <= planDays);
  const planWith = (change: DayChange) =>
    planDay({ child: child.id, today: day, ...facts, change, sittings, summary });
  const { steps } = planWith({});
  const isLookBack = steps.some((step) => step.what === 'sheet' && step.plan.lookBack);
  // A look-back has no cards before it: the facts named are those of the day after.
  const taught = isLookBack ? planWith({ later: ['lookBack'] }).steps : steps;
  const cards = taught.find((step) => step.what === 'cards');
  const tried = steps.find((step) => step.what === 'firstTry');
  const isCards = cards?.what === 'cards';
  const had = new Set<string>(isCards ? cards.had : []);
  return {
    hasSet: facts.set !== null,
    hasCards: child.settings.cards,
    untried: tried?.what === 'firstTry' ? tried.plan.prompts.length : 0,
    isLookBack,
    fresh: (isCards ? cards.fresh : []).flatMap((id) => newFact(id, had, household)),
    missed: missedLately(own, summary, child, today),
    faded: fadedAmong(
      [...(facts.set?.facts ?? []), ...facts.kept],
      withHeard(summary.facts, child.spoken),
      today,
    ),
  };
}

/** What the page is read from. */
export interface TeachSource {
  readonly household: Household;
  readonly history: History;
  readonly child: Child;
  readonly today: Day;
}

function newFact(id: FactId, had: ReadonlySet<string>, { lines }: Household): readonly NewFact[] {
  const fact = parseFact(id);
  if (!fact) return [];
  const strategy = strategyFor(fact, (other) => had.has(other.id));
  const own = lines.get(id);
  const line = own ?? strategyLine(strategy);
  return [
    {
      fact: id,
      whole: writtenWhole(fact),
      line,
      isOwn: own !== undefined,
      work: own ? '' : workOf(strategy),
    },
  ];
}

function missedLately(
  { sittings }: ChildHistory,
  { facts }: Summary,
  { settings }: Child,
  today: Day,
): ToTeach['missed'] {
  const times = new Map<FactId, number>();
  for (const { sat, rulings } of sittings) {
    const isLate = daysBetween(sat.day, today) < missedDays;
    if (!isLate || rulings.voided || (sat.purpose !== 'sheet' && sat.purpose !== 'row')) continue;
    for (const { prompt, outcome } of markSat(sat, rulings, settings.limits).places) {
      const id = outcome === 'wrong' || outcome === 'skipped' ? parseFact(prompt)?.id : undefined;
      if (id) times.set(id, (times.get(id) ?? 0) + 1);
    }
  }
  return [...times]
    .filter(([fact]) => facts.get(fact)?.recent.endsWith('0'))
    .toSorted(([, one], [, other]) => other - one)
    .slice(0, mostNamed)
    .map(([fact, many]) => ({ fact, times: many }));
}

function fadedAmong(among: readonly FactId[], facts: Summary['facts'], today: Day): ToTeach['faded'] {
  return [...new Set(among)]
    .flatMap((fact) => {
      const met = facts.get(fact);
      const last = met?.lastRight.at(-1);
      const days = last === undefined ? 0 : daysBetween(last, today);
      return met && days >= longDays ? [{ fact, days, strength: factStrength(met, today) }] : [];
    })
    .toSorted((one, other) => one.strength - other.strength)
    .slice(0, mostNamed)
    .map(({ fact, days }) => ({ fact, days }));
}
