import type { FactId } from '../fact/fact';
import { firstTryFacts } from '../first-try/first-try';
import { isHad, isUntried } from '../first-try/to-teach';
import type { Purpose, SittingPlan } from '../record/sat';
import { planRound, type Round } from '../round/plan-round';
import { isNew } from '../summary/accuracy';
import type { DaySource } from './day-source';
import type { DayTime } from './minutes';
import { seedFor } from './seed';
import type { Step } from './step';

/** Facts of a first try in one go: the longest usual set; a longer one goes on the next day (our own decision). */
const mostTried = 20;

/** Cards in a round, whatever the time (our own decision). */
const mostCards = 120;

/** A round with nothing new in it is a warm-up of about 3 minutes (our own decision). */
const warmUpMs = 180_000;

/** About 10 minutes for round and sheet (IES/WWC 2009, Recommendation 6). */
export const roundAndSheetMs = 600_000;

/**
 * All of a new set before any teaching: the facts never answered nor ticked. Once a day, however it ends; what it did
 * not reach comes on another day. A set of which something was taught already is tried as far as it is new.
 */
export function firstTryStep(source: DaySource, { leftMs, cardMs }: DayTime): Step | null {
  const { set, summary, ticked } = source;
  if (!set || isSatToday(source, 'firstTry') || isHanded(source, 'firstTry') || leftMs < cardMs) return null;
  const seed = seedFor(source.child, source.today, 'firstTry', 0);
  const facts = firstTryFacts(set.facts, { facts: summary.facts, ticked }, mostTried, seed);
  if (facts.length === 0) return null;
  const plan = { ...planFor(source, 'firstTry', seed, leftMs), prompts: facts };
  return { what: 'firstTry', plan };
}

/**
 * A card round before the sheet: required while the set is new and something of it is to be taught, the child's choice
 * after (common practice, no source). Only facts that were tried are taught. Once a day, however it ends.
 */
export function cardStep(source: DaySource, time: DayTime): Step | null {
  const { set, summary, settings } = source;
  if (!set || !settings.cards || isSatToday(source, 'cards') || isHanded(source, 'cards')) return null;
  const round = roundOf(source, time);
  if (!round) return null;
  const isRequired = round.fresh.length > 0 && isNew(summary, new Set(set.facts));
  if (!isRequired && source.change.straight) return null;
  const seed = seedFor(source.child, source.today, 'cards', 0);
  const plan: SittingPlan = {
    ...planFor(source, 'cards', seed, time.leftMs),
    prompts: round.cards.map(({ fact }) => fact),
    onWrong: 'showAgain',
    shownFirst: round.cards.flatMap((card, place) => (card.isNew ? [place] : [])),
  };
  return { what: 'cards', plan, isChoice: !isRequired, fresh: round.fresh, had: hadBy(source, set.facts) };
}

function hadBy({ kept, ticked, summary }: DaySource, set: readonly FactId[]): readonly FactId[] {
  const among = new Set([...set, ...kept, ...ticked]);
  return [...among].filter((fact) => isHad(fact, { facts: summary.facts, ticked }));
}

function roundOf(source: DaySource, { leftMs, cardMs }: DayTime): Round | null {
  const { today, set, kept, ticked, summary, settings } = source;
  const tried = set?.facts.filter((fact) => !isUntried(fact, { facts: summary.facts, ticked })) ?? [];
  const order = {
    ...{ today, set: tried, kept, ticked, summary, mostCards, cardMs },
    fixedNew: settings.newFacts,
    seed: seedFor(source.child, today, 'cards', 0),
  };
  const round = planRound({ ...order, budgetMs: leftMs });
  return round && round.fresh.length === 0
    ? planRound({ ...order, budgetMs: Math.min(leftMs, warmUpMs) })
    : round;
}

/** What was sat of this set today; a set changed in the middle of the day begins anew. */
function isSatToday({ sittings, today, set }: DaySource, purpose: Purpose): boolean {
  return sittings.some(
    ({ sat, rulings }) =>
      sat.purpose === purpose && sat.day === today && sat.set === set?.id && !rulings.voided,
  );
}

function isHanded({ change }: DaySource, step: 'firstTry' | 'cards'): boolean {
  return change.later?.includes(step) ?? false;
}

function planFor(
  { child, set, settings }: DaySource,
  purpose: Purpose,
  seed: number,
  leftMs: number,
): Omit<SittingPlan, 'prompts'> {
  return {
    child,
    purpose,
    of: null,
    set: set?.id ?? null,
    seed,
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: settings.keepTimes,
    enoughMs: Math.round(leftMs),
  };
}
