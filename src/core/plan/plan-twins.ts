import { type Fact, type FactId, parseFact } from '../fact/fact';
import type { MarkedPlace } from '../marking/marked';
import type { SittingPlan } from '../record/sat';
import type { Summary } from '../summary/summary';
import { twinOf } from '../twin/twin';
import { planAfterSheet } from './plan-sheet';
import type { SheetDay } from './sheet-day';

/**
 * The facts miscalculated on a sheet and its rows whose twins were not asked yet, in the order of first missing. A
 * wrong answer is a miscalculation unless the parent calls it a slip; a fact skipped was not calculated.
 */
export function untwinned({ marked, rows, parts }: SheetDay): readonly Fact[] {
  const asked = new Set(parts.flatMap(({ sat }) => askedTwins(sat)));
  const missed = [marked, ...rows].flatMap(({ places }) => places.filter(isMiscalculated));
  const facts = new Map(missed.flatMap(({ prompt }) => factEntry(prompt)));
  return [...facts.values()].filter(({ id }) => !asked.has(id));
}

/** Twins of those facts as a sitting: each of the same kind, none twice where the kind has enough. */
export function planTwins(
  sheet: SheetDay,
  facts: Summary['facts'],
  over: Pick<SittingPlan, 'keepTimes' | 'enoughMs'>,
): SittingPlan | null {
  const avoid = new Set<FactId>(sheet.toMend.map(({ fact }) => fact));
  const pairs: { readonly of: FactId; readonly twin: FactId }[] = [];
  for (const fact of untwinned(sheet)) {
    const twin = twinOf(fact, { facts, avoid });
    if (!twin) continue;
    avoid.add(twin.id);
    pairs.push({ of: fact.id, twin: twin.id });
  }
  if (pairs.length === 0) return null;
  const prompts = pairs.map(({ twin }) => twin);
  return {
    ...planAfterSheet(sheet.ruled.sat, 'mending', prompts, over),
    twinOf: pairs.map(({ of }) => of),
  };
}

function isMiscalculated({ outcome, slip }: MarkedPlace): boolean {
  return outcome === 'wrong' && slip !== true;
}

/** The facts whose twins a sitting asked, as far as it came. */
function askedTwins({ twinOf: facts, visits }: SheetDay['ruled']['sat']): readonly FactId[] {
  const reached = new Set(visits.flatMap(({ place, end }) => (end === 'left' ? [] : [place])));
  return facts?.filter((_, place) => reached.has(place)) ?? [];
}

function factEntry(prompt: string): readonly (readonly [FactId, Fact])[] {
  const fact = parseFact(prompt);
  return fact ? [[fact.id, fact]] : [];
}
