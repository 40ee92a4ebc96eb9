import type { AwayReason, KeyPress, Visit } from '../record/sat';
import { leftAfter, toMicro } from './bell';
import { endSitting, isAfterBell, openCard, voidVisit } from './close-visit';
import { press } from './press';
import { show } from './show';
import type { SittingEvent } from './sitting-event';
import type { SittingState, Stepped } from './sitting-state';

/** Keys that fall sooner after a new card's onset were meant for the card before. */
export const guardMs = 250;

/** One event on: the new state and what happened. Pure; the same events give the same sitting. */
export function stepSitting(state: SittingState, event: SittingEvent): Stepped {
  if (event.type === 'shown') return show(state, event);
  switch (state.phase) {
    case 'ended':
      return still(state);
    case 'away':
      if (event.type === 'returned') return comeBack(state, event.atMs);
      return event.type === 'stopped' ? stop(closeAway(state, event.atMs), event.atMs) : still(state);
    case 'showing':
    case 'answering':
      return stepCard(state, event);
  }
}

function stepCard(state: SittingState, event: Exclude<SittingEvent, { type: 'shown' }>): Stepped {
  switch (event.type) {
    case 'time':
      return ring(state, event.atMs);
    case 'key': {
      const keyPress: KeyPress = [event.key, event.atMs, event.via];
      return after(ring(state, event.atMs), (rung) => takeKey(rung, keyPress, event.atMs));
    }
    case 'left':
      return after(ringAtLeaving(state, event.why, event.atMs), (rung) =>
        rung.rang ? stop(rung, event.atMs) : leave(rung, event.why, event.atMs),
      );
    case 'stopped':
      return after(ring(state, event.atMs), (rung) => stop(rung, event.atMs));
    case 'returned':
      return still(state);
  }
}

function takeKey(state: SittingState, keyPress: KeyPress, atMs: number): Stepped {
  const last = state.visits.at(-1);
  const isSeen = state.phase === 'answering' && state.onsetMs !== null;
  if (isSeen && (!last || toMicro(atMs - state.onsetMs) >= guardMs)) return press(state, keyPress, atMs);
  // Before the very first card is seen there is nothing yet that a key could answer, and no card before.
  return last ? logLate(state, last, keyPress) : still(state);
}

function logLate(state: SittingState, last: Visit, keyPress: KeyPress): Stepped {
  const amended: Visit = { ...last, keys: [...last.keys, keyPress], late: (last.late ?? 0) + 1 };
  const index = state.visits.length - 1;
  return {
    state: { ...state, visits: state.visits.with(index, amended) },
    happened: [{ what: 'visitAmended', index }],
  };
}

function ring(state: SittingState, atMs: number): Stepped {
  const { rang, clockGone, bellAtMs } = state;
  if (rang || clockGone || bellAtMs === null || !isAfterBell(state, atMs)) return still(state);
  return { state: { ...state, rang: true }, happened: [{ what: 'bell' }] };
}

/** A sleep or a jump of the clocks is found out only afterwards: its stamp says nothing of the bell. */
function ringAtLeaving(state: SittingState, why: AwayReason, atMs: number): Stepped {
  return why === 'hidden' || why === 'stopped' ? ring(state, atMs) : still(state);
}

function leave(state: SittingState, why: AwayReason, atMs: number): Stepped {
  return after(voidVisit(state, atMs), ({ visits, away, ...rest }) =>
    still({
      ...rest,
      visits,
      away: [...away, { why, fromMs: atMs, toMs: null, afterVisits: visits.length }],
      phase: 'away',
      entry: '',
      from: null,
      clockGone: rest.plan.clock !== null,
      leftMs: leftAfter(rest.bellAtMs, visits.at(-1), true) ?? rest.leftMs,
    }),
  );
}

function comeBack(state: SittingState, atMs: number): Stepped {
  return { state: openCard(closeAway(state, atMs)), happened: [{ what: 'cardOpened' }] };
}

function closeAway(state: SittingState, toMs: number): SittingState {
  const last = state.away.at(-1);
  return last ? { ...state, away: state.away.with(-1, { ...last, toMs }) } : state;
}

/** Once the bell has rung the count is settled: whatever ends the sitting then, the bell ended it. */
function stop(state: SittingState, atMs: number): Stepped {
  return after(voidVisit(state, atMs), (closed) => ({
    state: endSitting(closed, state.rang ? 'bell' : 'stopped', atMs),
    happened: [{ what: 'ended' }],
  }));
}

function still(state: SittingState): Stepped {
  return { state, happened: [] };
}

function after(first: Stepped, then: (state: SittingState) => Stepped): Stepped {
  const second = then(first.state);
  return first.happened.length === 0
    ? second
    : { state: second.state, happened: [...first.happened, ...second.happened] };
}
