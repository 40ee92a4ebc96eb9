import { isLookBackDue } from '../look-back/look-back-due';
import { buildLookBack } from '../look-back/look-back-sheet';
import { withHeard } from '../memory/heard-aloud';
import type { SittingPlan } from '../record/sat';
import type { DaySource } from './day-source';
import { seedFor } from './seed';

/**
 * The look-back that takes the next sheet's place: every so many finished sheets (common practice, no source), of `most`
 * facts at most; `null` where none is due, there is nothing kept to look back on, or it was handed to another day.
 */
export function planLookBack(source: DaySource, most: number): SittingPlan | null {
  const { child, today, settings, change, summary, kept, spread, spoken } = source;
  const isHanded = change.later?.includes('lookBack') ?? false;
  if (spread || isHanded || !isLookBackDue(summary.lookBacks, settings.lookBackEvery)) return null;
  const seed = seedFor(child, today, 'lookBack', 0);
  const length = Math.min(change.length ?? settings.length, most);
  const prompts = buildLookBack({ today, kept, facts: withHeard(summary.facts, spoken), length, seed });
  if (!prompts) return null;
  return {
    child,
    purpose: 'sheet',
    of: null,
    set: null,
    seed,
    prompts,
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: settings.keepTimes,
    lookBack: true,
  };
}
