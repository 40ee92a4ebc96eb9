import type { ChildHistory } from '../../core/household/history';
import type { Child } from '../../core/household/household';
import type { SittingPlan } from '../../core/record/sat';
import type { Day } from '../../core/record/stamp';
import type { SheetOnPaper } from './plan-prints';

/** A sheet on paper as the sitting it was: its clock is the child's, a second one of a day has no band. */
export function planOnPaper(
  { set, seed, facts }: SheetOnPaper,
  { id, settings }: Child,
  isTimed: boolean,
  isSecond: boolean,
): SittingPlan {
  return {
    child: id,
    purpose: 'sheet',
    of: null,
    set,
    seed,
    prompts: facts,
    clock: isTimed ? { allowanceMs: settings.allowanceS * 1000, sight: settings.sight } : null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: false,
    ...(isSecond ? { second: true as const } : {}),
  };
}

/** Whether a sheet stands on that day already. */
export function hasSheetOn(day: Day, { sittings }: ChildHistory): boolean {
  return sittings.some(({ sat, rulings }) => sat.purpose === 'sheet' && sat.day === day && !rulings.voided);
}
