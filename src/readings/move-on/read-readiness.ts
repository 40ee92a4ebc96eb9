import type { FactId } from '../../core/fact/fact';
import { accuracyWindow, accurateFrom } from '../../core/summary/accuracy';
import type { Answer } from '../child-log/answer';
import type { ChildLog, ReadSet } from '../child-log/child-log';
import type { FactReading } from '../facts/fact-reading';
import { quickMs } from '../facts/pace';
import type { HeldBack, Readiness } from './readiness';
import { stillNew } from './still-new';

/** A set may be moved on from with this share of its facts slow or uneven, none of them new or to be learned (our own decision). */
const mostHeldBack = 0.1;

/** Likely right in so many answers a fact counts as known, as in its own reading (our own decision). */
const knownFrom = 0.7;

const weakestFirst: readonly HeldBack['state'][] = ['toLearn', 'uneven', 'slow', 'notEnough'];

/** Whether the child may move on from the current set, and whether it may be timed; `null` without a set. */
export function readReadiness(log: ChildLog, facts: ReadonlyMap<FactId, FactReading>): Readiness | null {
  const { current, child } = log;
  if (!current || current.facts.size === 0) return null;
  const last = lastWithoutClock(log, current);
  const lastRight = last.filter(({ outcome }) => outcome === 'right').length;
  const [newest, oldest] = [last[0], last.at(-1)];
  const isAccurate = last.length === accuracyWindow && lastRight >= accurateFrom;
  const fresh = stillNew(log, current);
  const own = [...current.facts].flatMap((fact) => facts.get(fact) ?? []);
  const heldBack = [...current.facts].flatMap((fact) => heldBackBy(fact, facts.get(fact), fresh.has(fact)));
  heldBack.sort((x, y) => weakestFirst.indexOf(x.state) - weakestFirst.indexOf(y.state));
  const few = heldBack.length <= mostHeldBack * current.facts.size;
  return {
    set: current.id,
    facts: current.facts.size,
    quick: own.filter(({ state }) => state === 'quick').length,
    lastRight,
    lastOf: last.length,
    lastDays: newest && oldest ? [oldest.day, newest.day] : null,
    isAccurate,
    unevenWithClock: own.filter(
      (one) => isUnevenInAll(one) && heldBack.every(({ fact }) => fact !== one.fact.id),
    ).length,
    isReady: isAccurate && few && heldBack.every(({ state, isNew }) => !isNew && state !== 'toLearn'),
    heldBack,
    clock: clockFor(child.settings.timed, isAccurate),
  };
}

/** The last answers, newest first, without the clock to the set's facts; the plan counts the same way. */
function lastWithoutClock({ sats }: ChildLog, { facts }: ReadSet): readonly Answer[] {
  const last: Answer[] = [];
  for (const { answers } of sats.toReversed()) {
    for (const answer of answers.toReversed()) {
      if (!answer.withClock && facts.has(answer.fact.id)) last.push(answer);
      if (last.length === accuracyWindow) return last;
    }
  }
  return last;
}

/** What a fact has against it, if anything. */
function heldBackBy(fact: FactId, reading: FactReading | undefined, isNew: boolean): readonly HeldBack[] {
  if (!reading) return [{ fact, state: 'notEnough', isNew }];
  if (!isNew && (reading.state === 'quick' || isLikelyQuick(reading))) return [];
  return [{ fact, state: reading.state === 'quick' ? 'notEnough' : reading.state, isNew }];
}

/**
 * To be sure of each single fact takes months of answers, and the set's accuracy stands by then: the likelier reading is
 * enough. Nor does it matter what goes wrong with the clock alone. Where times are not kept quick can't be told, and
 * being right is enough.
 */
function isLikelyQuick(reading: FactReading): boolean {
  const { notEnough, accuracy, thinkMs } = reading;
  const isOpen = notEnough === 'notSure' || notEnough === 'noTimes' || isUnevenInAll(reading);
  return isOpen && accuracy.share >= knownFrom && (thinkMs === null || thinkMs < quickMs);
}

/** Uneven by answers with the clock and without it taken together. */
function isUnevenInAll({ state, withoutClock }: FactReading): boolean {
  return state === 'uneven' && !withoutClock;
}

/** Time only what is already accurate (Rhymer et al. 1998). */
function clockFor(timed: boolean, isAccurate: boolean): Readiness['clock'] {
  if (timed) return isAccurate ? 'fine' : 'notYet';
  return isAccurate ? 'timeIt' : 'fine';
}
