import type { SittingPlan, Visit } from '../record/sat';
import { isRight } from './answer';
import type { SittingState } from './sitting-state';

/** Which card comes and how it looks: the part of the state that a closed visit moves. */
export type Turn = Pick<SittingState, 'turn' | 'again' | 'place' | 'from' | 'shown'>;

/** The card after a visit; `place` is −1 when every card is done. */
export function turnAfter(state: SittingState, visit: Visit): Turn {
  const { plan, turn, again } = state;
  const onFirstPass = turn < plan.prompts.length;
  const others = onFirstPass ? again.filter((place) => place !== visit.place) : again;
  switch (visit.end) {
    case 'left':
      return { turn, again, place: visit.place, from: null, shown: visit.shown ?? false };
    case 'back': {
      const place = placeAt(state, turn - 1, again);
      return {
        turn: turn - 1,
        again,
        place,
        from: standing(state.visits, place),
        shown: isShownFirst(plan, place),
      };
    }
    case 'skipped':
      return fresh(state, turn + 1, onFirstPass ? [...others, visit.place] : again);
    case 'taken':
      return plan.onWrong === 'showAgain' && !isRight(plan.prompts[visit.place], visit.given)
        ? { turn, again, place: visit.place, from: null, shown: true }
        : fresh(state, turn + 1, others);
  }
}

function fresh(state: SittingState, turn: number, again: readonly number[]): Turn {
  const place = placeAt(state, turn, again);
  return { turn, again, place, from: null, shown: isShownFirst(state.plan, place) };
}

/** Whether a place's card shows the whole fact as it comes: a new fact is never first met as a question. */
export function isShownFirst({ shownFirst }: SittingPlan, place: number): boolean {
  return shownFirst?.includes(place) ?? false;
}

function placeAt({ plan }: SittingState, turn: number, again: readonly number[]): number {
  return turn < plan.prompts.length ? turn : (again[turn - plan.prompts.length] ?? -1);
}

/** The digits that stood when a card was decided; the one that took it by itself is the key taken back. */
function standing(visits: readonly Visit[], place: number): string {
  const last = visits.findLast((visit) => visit.place === place && isDeciding(visit));
  const given = last?.given ?? '';
  return last?.took === 'itself' ? given.slice(0, -1) : given;
}

/** Whether a visit decided its place; the last that did is the one that counts. */
export function isDeciding(visit: Visit): boolean {
  return visit.end === 'taken' || visit.end === 'skipped';
}
