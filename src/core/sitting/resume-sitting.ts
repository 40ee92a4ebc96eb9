import type { Away, Sat, SittingPlan, Visit } from '../record/sat';
import { reckonBell } from './bell';
import { addVisit, endSitting, isDone, openCard } from './close-visit';
import { isEnough } from './enough';
import { beginSitting, type SittingState } from './sitting-state';

/**
 * A sitting from its journal: ended where every card was done or the bell had rung, else away (`torn`, unless the
 * journal says why) until `returned`. The card that was up is void.
 */
export function resumeSitting(
  plan: SittingPlan,
  visits: readonly Visit[],
  away: readonly Away[],
): SittingState {
  const state = standAfter(plan, visits, away);
  const last = visits.at(-1);
  const lastMs = last?.endMs ?? null;
  const hasRung = last?.afterBell === true && away.length === 0;
  if (hasRung) return { ...endSitting(state, 'bell', lastMs), rang: true };
  if (isDone(state)) return endSitting(state, 'finished', lastMs);
  if (isEnough(state)) return endSitting(state, 'enough', lastMs);
  const open = away.at(-1);
  const isAway = open !== undefined && open.toMs === null && open.afterVisits === visits.length;
  const torn: Away = { why: 'torn', fromMs: lastMs ?? 0, toMs: null, afterVisits: visits.length };
  const spans = isAway ? away : [...away, torn];
  return {
    ...state,
    phase: 'away',
    entry: '',
    from: null,
    away: spans,
    clockGone: plan.clock !== null,
    ...reckonBell(plan, visits, spans),
  };
}

/** The sitting a record tells of, at its end: visits, spans away and bell to the microsecond. */
export function replaySat(sat: Sat): SittingState {
  const state = standAfter(planOf(sat), sat.visits, sat.away);
  return { ...endSitting(state, sat.ended, sat.endedMs), rang: sat.ended === 'bell' };
}

function standAfter(plan: SittingPlan, visits: readonly Visit[], away: readonly Away[]): SittingState {
  const stood = visits.reduce((state, visit) => openCard(addVisit(state, visit)), beginSitting(plan));
  const clockGone = plan.clock !== null && away.length > 0;
  return { ...stood, away, clockGone, ...reckonBell(plan, visits, away) };
}

/** The plan a record was sat by. */
function planOf(sat: Sat): SittingPlan {
  const { child, purpose, of, set, seed, prompts, clock, takesItself, onWrong, keepTimes } = sat;
  const { second, lookBack, shownFirst, twinOf, enoughMs } = sat;
  return {
    ...{ child, purpose, of, set, seed, prompts, clock, takesItself, onWrong, keepTimes },
    ...(second && { second }),
    ...(lookBack && { lookBack }),
    ...(shownFirst && { shownFirst }),
    ...(twinOf && { twinOf }),
    ...(enoughMs !== undefined && { enoughMs }),
  };
}
