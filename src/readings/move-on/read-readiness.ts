import type { FactId } from '../../core/fact/fact';
import { accuracyWindow, accurateFrom } from '../../core/summary/accuracy';
import type { ChildLog, ReadSet } from '../child-log/child-log';
import type { FactReading } from '../facts/fact-reading';
import type { HeldBack, Readiness } from './readiness';

/** A set may be moved on from with this share of its facts still held back, none of them to be learned (our own decision). */
const mostHeldBack = 0.1;

const weakestFirst: readonly HeldBack['state'][] = ['toLearn', 'uneven', 'slow', 'notEnough'];

/** Whether the child may move on from the current set, and whether it may be timed; `null` without a set. */
export function readReadiness(log: ChildLog, facts: ReadonlyMap<FactId, FactReading>): Readiness | null {
  const { current, child } = log;
  if (!current || current.facts.size === 0) return null;
  const last = lastWithoutClock(log, current);
  const lastRight = last.filter(Boolean).length;
  const isAccurate = last.length === accuracyWindow && lastRight >= accurateFrom;
  const heldBack = [...current.facts].flatMap((fact) => heldBackBy(fact, facts.get(fact)));
  heldBack.sort((x, y) => weakestFirst.indexOf(x.state) - weakestFirst.indexOf(y.state));
  const few = heldBack.length <= mostHeldBack * current.facts.size;
  return {
    set: current.id,
    facts: current.facts.size,
    quick: current.facts.size - heldBack.length,
    lastRight,
    lastOf: last.length,
    isAccurate,
    isReady: isAccurate && few && heldBack.every(({ state }) => state !== 'toLearn'),
    heldBack,
    clock: clockFor(child.settings.timed, isAccurate),
  };
}

/** Right or not, of the last answers without the clock to the set's facts; the plan counts the same way. */
function lastWithoutClock({ sats }: ChildLog, { facts }: ReadSet): readonly boolean[] {
  const last: boolean[] = [];
  for (const { answers } of sats.toReversed()) {
    for (const { fact, withClock, outcome } of answers.toReversed()) {
      if (!withClock && facts.has(fact.id)) last.push(outcome === 'right');
      if (last.length === accuracyWindow) return last;
    }
  }
  return last;
}

/** Where times are not kept quick can't be told, and being right is enough. */
function heldBackBy(fact: FactId, reading: FactReading | undefined): readonly HeldBack[] {
  if (!reading) return [{ fact, state: 'notEnough' }];
  const { state, notEnough } = reading;
  return state === 'quick' || notEnough === 'noTimes' ? [] : [{ fact, state }];
}

/** Time only what is already accurate (Rhymer et al. 1998). */
function clockFor(timed: boolean, isAccurate: boolean): Readiness['clock'] {
  if (timed) return isAccurate ? 'fine' : 'notYet';
  return isAccurate ? 'timeIt' : 'fine';
}
