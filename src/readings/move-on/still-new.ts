import type { FactId } from '../../core/fact/fact';
import { isNew } from '../../core/summary/accuracy';
import { stepSummary } from '../../core/summary/step-summary';
import { emptySummary, type Summary } from '../../core/summary/summary';
import type { ChildLog, ReadSet } from '../child-log/child-log';

/** The facts of a set that were not yet right at first try on three days; the plan counts the same way. */
export function stillNew({ sats }: Pick<ChildLog, 'sats'>, { facts }: ReadSet): ReadonlySet<FactId> {
  const ids: ReadonlySet<string> = facts;
  const isOfSet = (prompt: string) => ids.has(prompt);
  const known = new Map(emptySummary.facts);
  let summary: Summary = { ...emptySummary, facts: known };
  for (const { ruled, marked } of sats) {
    if (!ruled.sat.prompts.some(isOfSet)) continue;
    // A round names its new facts by their places; of all else the set's own are enough.
    const isRound = ruled.sat.purpose === 'cards';
    const places = isRound ? marked.places : marked.places.filter(({ prompt }) => isOfSet(prompt));
    summary = stepSummary(summary, ruled, places, known);
  }
  return new Set([...facts].filter((fact) => isNew(summary, new Set([fact]))));
}
