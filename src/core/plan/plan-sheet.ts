import type { FactId } from '../fact/fact';
import type { SpokenCheck, Trial } from '../household/household';
import { withHeard } from '../memory/heard-aloud';
import type { DayChange } from '../record/household-record';
import type { SittingPlan } from '../record/sat';
import type { ChildSettings } from '../record/settings';
import type { Day, Id } from '../record/stamp';
import { buildSheet, type KeptFact } from '../sheet/build-sheet';
import type { FactSummary, Summary } from '../summary/summary';
import { seedFor } from './seed';
import { trialDayOf } from './trial-day';

/** What a sheet is made from. `nth` counts the child's sheets of the day from 0; a second one has no band. */
export interface SheetSource {
  readonly child: Id;
  readonly day: Day;
  readonly nth: number;
  readonly set: { readonly id: Id; readonly facts: readonly FactId[] };
  /** Facts already moved on from, or known at set-up. */
  readonly kept: readonly FactId[];
  readonly settings: ChildSettings;
  readonly change: DayChange;
  readonly summary: Summary;
  /** Spoken checks held, by day. */
  readonly spoken: readonly SpokenCheck[];
  /** The clock trial in force. */
  readonly trial: Trial | null;
  /** There is no time for more facts; a sheet with the clock takes its allowance, however long. */
  readonly most: number;
}

/** Today's sheet: the same for the same source. */
export function planSheet(source: SheetSource): SittingPlan {
  const { child, day, nth, set, settings, change, summary } = source;
  const seed = seedFor(child, day, 'sheet', nth);
  const drawn = nth === 0 ? trialDayOf(source) : null;
  const timed = drawn ? drawn.kind === 'thread' : (change.timed ?? settings.timed);
  const length = change.length ?? settings.length;
  const own = new Set(set.facts);
  const kept = source.kept.filter((fact) => !own.has(fact));
  const met = withHeard(summary.facts, source.spoken);
  const { facts } = buildSheet({
    set: set.facts,
    kept: kept.map((fact) => ({ fact, ...fading(met.get(fact)) })),
    length: timed ? length : Math.min(length, source.most),
    keptShare: settings.keptShare,
    seed,
    met: new Map([...summary.facts].map(([fact, { seen }]) => [fact, seen])),
  });
  const sight = drawn ? 'thread' : settings.sight;
  return {
    child,
    purpose: 'sheet',
    of: null,
    set: set.id,
    seed,
    prompts: facts,
    clock: timed ? { allowanceMs: settings.allowanceS * 1000, sight } : null,
    takesItself: timed && settings.takesItself,
    onWrong: 'goOn',
    keepTimes: settings.keepTimes,
    ...(nth > 0 ? { second: true as const } : {}),
    ...(drawn ? { trial: drawn.sat } : {}),
  };
}

/** An untimed list after a sheet: rows pass over a wrong answer, mending shows the fact and asks again. */
export function planAfterSheet(
  sheet: SittingPlan & { readonly id: Id },
  purpose: 'row' | 'mending',
  facts: readonly FactId[],
  over: Pick<SittingPlan, 'keepTimes' | 'enoughMs'>,
): SittingPlan {
  return {
    child: sheet.child,
    purpose,
    of: sheet.id,
    set: sheet.set,
    seed: sheet.seed,
    prompts: facts,
    clock: null,
    takesItself: false,
    onWrong: purpose === 'mending' ? 'showAgain' : 'goOn',
    ...over,
  };
}

/** `lastSeen` is the day as a number that rises with time, 20261125. */
export function fading(seen: FactSummary | undefined): Omit<KeptFact, 'fact'> {
  if (!seen) return { lastSeen: Number.NEGATIVE_INFINITY, weakness: 0.5 };
  const wrong = [...seen.recent].filter((mark) => mark === '0').length;
  return {
    lastSeen: Number(seen.lastSeen.replaceAll('-', '')),
    weakness: (wrong + 0.5) / (seen.recent.length + 1),
  };
}
