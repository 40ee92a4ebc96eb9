import type { KeyPress, Visit, VisitEnd } from '../record/sat';
import { digitsOf, entryCap } from './answer';
import { closedLast, closeVisit, endSitting, isAfterBell, isDone, openCard } from './close-visit';
import { isEnough } from './enough';
import type { Happening } from './sitting-event';
import type { SittingState, Stepped } from './sitting-state';

const entered: readonly Happening[] = [{ what: 'entered' }];
const nothing: readonly Happening[] = [];

/** A key on a card that is seen: logged, and entered where it means something. */
export function press(before: SittingState, keyPress: KeyPress, atMs: number): Stepped {
  const [key] = keyPress;
  const state = { ...before, keys: [...before.keys, keyPress] };
  switch (key) {
    case 'skip':
      return decide(state, 'skipped', atMs, null);
    case 'done':
      return state.entry === '' ? { state, happened: nothing } : decide(state, 'taken', atMs, 'done');
    case 'back':
      if (state.entry !== '') return enter(state, state.entry.slice(0, -1));
      // Past the bell only the card on screen may be finished, and the first card has none before it.
      if (state.turn === 0 || isPastBell(state, atMs)) return { state, happened: nothing };
      return {
        state: openCard(closeVisit(state, 'back', atMs)),
        happened: [closedLast(state), { what: 'cardOpened' }],
      };
    default: {
      if (state.entry.length >= entryCap) return { state, happened: nothing };
      const typed = enter(state, state.entry + key);
      const isTaken = takesItself(state) && typed.state.entry.length >= digitsOf(promptOf(state));
      if (!isTaken) return typed;
      const decided = decide(typed.state, 'taken', atMs, 'itself');
      return { state: decided.state, happened: [...entered, ...decided.happened] };
    }
  }
}

/** Without a clock an answer waits for the done key; practice is where taking by digits is learned. */
function takesItself({ plan }: SittingState): boolean {
  return plan.takesItself && (plan.clock !== null || plan.purpose === 'practice');
}

function promptOf({ plan, place }: SittingState) {
  return plan.prompts[place];
}

function enter(state: SittingState, entry: string): Stepped {
  return { state: { ...state, entry }, happened: entered };
}

function isPastBell(state: SittingState, atMs: number): boolean {
  return !state.clockGone && isAfterBell(state, atMs);
}

function decide(state: SittingState, end: VisitEnd, atMs: number, took: Visit['took']): Stepped {
  const closed = closeVisit(state, end, atMs, took);
  const late = isPastBell(state, atMs);
  // A key that fell before the bell may be handled after it was rung; the card it closed was the one on screen.
  const early = state.rang ? 'bell' : isEnough(closed) ? 'enough' : null;
  const ended = isDone(closed) ? (late ? 'bell' : 'finished') : early;
  return ended
    ? { state: endSitting(closed, ended, atMs), happened: [closedLast(state), { what: 'ended' }] }
    : { state: openCard(closed), happened: [closedLast(state), { what: 'cardOpened' }] };
}
