import { activeTimes } from '../marking/active-time';
import type { Visit } from '../record/sat';
import { isRight } from './answer';
import type { SittingState } from './sitting-state';

/**
 * Whether the time for this sitting is used up and its last card is through, the whole fact written where it was
 * shown: it ends between two cards, never in one. Where times were not kept over a reload nothing is used up.
 */
export function isEnough({ plan, visits, away }: Pick<SittingState, 'plan' | 'visits' | 'away'>): boolean {
  const last = visits.at(-1);
  if (plan.enoughMs === undefined || plan.clock || !last || !isThrough(plan, last)) return false;
  return (activeTimes({ visits, away }).at(-1) ?? 0) >= plan.enoughMs;
}

function isThrough({ onWrong, prompts }: SittingState['plan'], { end, place, given }: Visit): boolean {
  if (end === 'skipped') return true;
  return end === 'taken' && (onWrong === 'goOn' || isRight(prompts[place], given));
}
