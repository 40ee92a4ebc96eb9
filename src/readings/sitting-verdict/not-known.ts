import type { FactId } from '../../core/fact/fact';
import { betaBelow } from '../statistics/beta';
import { type FactPast, isGood, nearDays } from './past';
import type { Sheet, Troubled } from './sheet';
import type { New, NotKnown } from './verdict';

/** A fact is new until it was right at first try on three days (design) … */
const newUntilRightDays = 3;

/** … or until it has been met on so many days: what still isn't right then is not merely new (our own decision). */
const newUntilDays = 6;

/** Two troubled facts can be a matter of luck; so many are asked about. */
const fewestFacts = 2;

/** Of the earlier answers, how many are needed, and how many of the newest of each fact are looked at. */
const before = { fewest: 6, perFact: 6 } as const;

/**
 * Facts that were only slow are called not known where they were hardly ever quick before: slow, right and now and then
 * quick may be counting or checking, and nothing here can tell which (our own decision).
 */
const mostQuick = 0.1;

/** Known is right in over 7 of 10, as with facts; said when this sure that it is less. */
const knownShare = 0.7;
const sureFrom = 0.9;

export function isNewFact({ days, rightDays }: FactPast): boolean {
  return rightDays < newUntilRightDays && days < newUntilDays;
}

/** Whether newness explains at least half of what was missed or long in coming. */
export function newness(sheet: Sheet): New | null {
  const troubled = sheet.troubled();
  const facts = factsOf(troubled.filter(({ past }) => isNewFact(past)));
  const all = factsOf(troubled).length;
  return facts.length >= fewestFacts && facts.length * 2 >= all
    ? { name: 'new', facts, troubled: all }
    : null;
}

/**
 * Facts missed or long in coming that were no better without the clock on the days before. Facts still new are left
 * to newness, so that no fact has two causes.
 */
export function notKnown(sheet: Sheet): NotKnown | null {
  const { day } = sheet;
  const troubled = sheet.troubled();
  const old = troubled.filter(({ past }) => !isNewFact(past));
  const weak = old.filter(({ past, missed }) => isWeak(past, missed, day));
  const facts = factsOf(weak);
  if (facts.length < fewestFacts || facts.length * 2 < factsOf(troubled).length) return null;
  const pasts = [...new Map(weak.map(({ answer, past }) => [answer.fact.id, past])).values()];
  const answers = pasts.flatMap((past) => withoutClock(past, day));
  const right = answers.filter(({ outcome }) => outcome === 'right').length;
  const quick = answers.filter(isGood).length;
  if (answers.length < before.fewest) return null;
  const missed = factsOf(weak.filter((one) => one.missed)).length;
  if (missed < fewestFacts && quick > mostQuick * answers.length) return null;
  const below = betaBelow({ right: quick + 1, wrong: answers.length - quick + 1 }, knownShare);
  return below >= sureFrom ? { name: 'notKnown', facts, before: { of: answers.length, right, quick } } : null;
}

/** Missed before as well, or slow before as well where it was only slow today. */
function isWeak(past: FactPast, missed: boolean, day: number): boolean {
  const answers = withoutClock(past, day);
  if (answers.length < 2) return false;
  const good = answers.filter((one) => (missed ? one.outcome === 'right' : isGood(one))).length;
  return good < knownShare * answers.length;
}

/** The newest answers without the clock, near enough to today. */
function withoutClock({ answers }: FactPast, day: number): FactPast['answers'] {
  return answers.filter((one) => !one.withClock && day - one.dayCount <= nearDays).slice(-before.perFact);
}

function factsOf(troubled: readonly Troubled[]): readonly FactId[] {
  return [...new Set(troubled.map(({ answer }) => answer.fact.id))];
}
