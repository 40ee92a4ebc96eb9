import type { Spread } from '../household/household';
import type { SittingPlan } from '../record/sat';
import type { ChildSettings } from '../record/settings';
import type { Id } from '../record/stamp';
import { type SpreadPart, spreadFacts } from '../spread/spread-facts';
import type { Summary } from '../summary/summary';
import { seedFor } from './seed';

/** What decides whether today's sheet is one half of a spread. */
export interface SpreadSource {
  readonly spread: Spread | null;
  readonly summary: Pick<Summary, 'spread'>;
}

/** The half of the spread that is still to be sat; `null` without a spread, and when both were sat. */
export function nextSpreadPart({ spread, summary }: SpreadSource): SpreadPart | null {
  if (!spread) return null;
  const sat = summary.spread?.spread === spread.id ? summary.spread.parts : [];
  return ([0, 1] as const).find((part) => !sat.includes(part)) ?? null;
}

/** Whether both halves have been sat and what they say waits for the parent. */
export function isSpreadSat(source: SpreadSource): boolean {
  return source.spread !== null && nextSpreadPart(source) === null;
}

/** One half of a spread as a sheet: no clock and no set; its halves differ by their part alone. */
export function planSpread(
  child: Id,
  spread: Spread,
  part: SpreadPart,
  { keepTimes }: Pick<ChildSettings, 'keepTimes'>,
): SittingPlan {
  const seed = seedFor(child, spread.id, 'spread', 0);
  return {
    child,
    purpose: 'sheet',
    of: null,
    set: null,
    seed,
    prompts: spreadFacts(spread.ops, part, seed),
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes,
    spread: { spread: spread.id, part },
  };
}
