import type { SittingEnd, Visit, VisitEnd } from '../record/sat';
import type { Happening } from './sitting-event';
import type { SittingState, Stepped } from './sitting-state';
import { turnAfter } from './turn';

/** A new showing of the card the state stands at. */
export function openCard(state: SittingState): SittingState {
  return {
    ...state,
    phase: 'showing',
    showing: state.showing + 1,
    entry: state.from ?? '',
    keys: [],
    onsetMs: null,
    onsetBy: 'frame',
  };
}

/** Ends the sitting. */
export function endSitting(state: SittingState, ended: SittingEnd, endedMs: number | null): SittingState {
  return { ...state, phase: 'ended', entry: '', ended, endedMs };
}

/** Puts the card now up among the visits and moves the turn; the next card is not opened yet. */
export function closeVisit(
  state: SittingState,
  end: VisitEnd,
  endMs: number,
  took: Visit['took'] = null,
): SittingState {
  const { place, onsetMs, onsetBy, from, shown, keys } = state;
  const visit: Visit = {
    place,
    onsetMs,
    onsetBy,
    ...(from !== null && { from }),
    ...(shown && { shown }),
    keys,
    end,
    endMs,
    given: took ? state.entry : null,
    took,
    ...(took && isAfterBell(state, endMs) && { afterBell: true }),
  };
  return { ...addVisit(state, visit), closed: state.showing, leftMs: null };
}

/** The state with one more closed visit and the turn moved on; a place of −1 is never stood at. */
export function addVisit(state: SittingState, visit: Visit): SittingState {
  const next = turnAfter(state, visit);
  const place = next.place < 0 ? state.place : next.place;
  return { ...state, ...next, place, visits: [...state.visits, visit] };
}

/** Whether every card is done. */
export function isDone({ turn, plan, again }: SittingState): boolean {
  return turn >= plan.prompts.length + again.length;
}

/** By time stamps; where the bell can no longer be known, nothing more is counted. */
export function isAfterBell({ plan, bellAtMs }: SittingState, atMs: number): boolean {
  return plan.clock !== null && (bellAtMs === null || atMs > bellAtMs);
}

/** Closes the card now up, if it was seen, as void. */
export function voidVisit(state: SittingState, atMs: number): Stepped {
  if (state.phase !== 'answering') return { state, happened: [] };
  return { state: closeVisit(state, 'left', atMs), happened: [closedLast(state)] };
}

/** The happening of a visit about to be added to `state`. */
export function closedLast(state: SittingState): Happening {
  return { what: 'visitClosed', index: state.visits.length };
}
