import type { RuledSat } from '../household/history';
import { markSat } from '../marking/mark-sat';
import { defaultChildSettings } from '../record/settings';
import { stepSummary } from './step-summary';
import { emptySummary, type Summary } from './summary';

/** Goes on from a summary over the sittings that follow it, in order. Bands play no part, so any limits do. */
export function resumeSummary(from: Summary, sittings: readonly RuledSat[]): Summary {
  const facts = new Map(from.facts);
  return sittings.reduce(
    (summary: Summary, ruled) =>
      stepSummary(
        summary,
        ruled,
        markSat(ruled.sat, ruled.rulings, defaultChildSettings.limits).places,
        facts,
      ),
    { ...from, facts },
  );
}

/** The summary of all of a child's sittings, in order. */
export function summarize(sittings: readonly RuledSat[]): Summary {
  return resumeSummary(emptySummary, sittings);
}
