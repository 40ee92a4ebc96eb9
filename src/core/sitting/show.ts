import type { Visit } from '../record/sat';
import { reckonBell, toMicro } from './bell';
import type { SittingEvent } from './sitting-event';
import type { SittingState, Stepped } from './sitting-state';

type Shown = Extract<SittingEvent, { type: 'shown' }>;

const goodness: Record<Visit['onsetBy'], number> = { paper: 0, frame: 0, elementCoarse: 1, element: 2 };

/** The onset of the card now up, or a better reading of it; or of the card just closed. */
export function show(state: SittingState, event: Shown): Stepped {
  const isUp = state.phase === 'showing' || state.phase === 'answering';
  if (!isUp || (event.showing ?? state.showing) !== state.showing) return amendLast(state, event);
  if (state.phase === 'answering' && !isBetter(event, state)) return { state, happened: [] };
  const onset = { phase: 'answering', onsetMs: event.atMs, onsetBy: event.by } as const;
  const bell = state.leftMs === null ? {} : { bellAtMs: toMicro(event.atMs + state.leftMs) };
  const first = state.visits.length === 0 ? { firstOnsetMs: event.atMs } : {};
  return { state: { ...state, ...onset, ...bell, ...first }, happened: [] };
}

/**
 * The paint of a card is sometimes reported only when its answer has been taken already. A card before or at an
 * interruption keeps what it had: the bell was reckoned from it.
 */
function amendLast(state: SittingState, event: Shown): Stepped {
  const index = state.visits.length - 1;
  const last = state.visits[index];
  const isBroken = last?.end === 'left' || state.away.some(({ afterVisits }) => afterVisits >= index);
  if (!last || isBroken || event.showing !== state.closed || !isBetter(event, last))
    return { state, happened: [] };
  const visits = state.visits.with(index, { ...last, onsetMs: event.atMs, onsetBy: event.by });
  const bell = index === 0 ? reckonBell(state.plan, visits, state.away) : {};
  return { state: { ...state, visits, ...bell }, happened: [{ what: 'visitAmended', index }] };
}

function isBetter(event: Shown, than: Pick<Visit, 'onsetBy'>): boolean {
  return goodness[event.by] > goodness[than.onsetBy];
}
