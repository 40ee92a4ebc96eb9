import type { Away, Sat, SittingPlan, SittingStart, Visit } from '../record/sat';
import type { Stamp } from '../record/stamp';
import { voidVisit } from './close-visit';
import type { SittingState } from './sitting-state';

/** The record of a sitting before the log has stamped it; one that has not ended is sealed as torn. */
export function sealSitting(state: SittingState, start: SittingStart): Omit<Sat, keyof Stamp> {
  const { plan } = state;
  const lastMs = state.visits.at(-1)?.endMs ?? 0;
  const closed = state.ended
    ? state
    : voidVisit(state, state.keys.at(-1)?.[1] ?? state.onsetMs ?? lastMs).state;
  const endedMs = state.ended ? state.endedMs : (closed.visits.at(-1)?.endMs ?? 0);
  return {
    ...plan,
    ...start,
    kind: 'sat',
    visits: closed.visits.map((visit) => keptVisit(plan, visit)),
    away: closed.away.map((span) => keptAway(plan, span)),
    ended: state.ended ?? 'torn',
    endedMs: plan.keepTimes ? endedMs : null,
  };
}

/** A visit as it may be stored: without times, and without late keys, which only times set apart, unless they are kept. */
export function keptVisit({ keepTimes }: SittingPlan, visit: Visit): Visit {
  if (keepTimes) return visit;
  const { late = 0, ...rest } = visit;
  const keys = visit.keys.slice(0, visit.keys.length - late);
  return { ...rest, onsetMs: null, endMs: null, keys: keys.map(([key, , via]) => [key, null, via]) };
}

/** A span away as it may be stored. */
export function keptAway({ keepTimes }: SittingPlan, span: Away): Away {
  return keepTimes ? span : { ...span, fromMs: null, toMs: null };
}
