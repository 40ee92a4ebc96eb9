import { formatISO } from 'date-fns';
import type { Child, Household } from '../../../core/household/household';
import type { Id } from '../../../core/record/stamp';
import type { Decision } from '../../../state/record-book/record-book';
import type { Span } from './term';

/** The sets a child began and moved on from in a span of days, each once, oldest first; what was taken back is none. */
export function setsOf(
  decisions: readonly Decision[],
  child: Child,
  household: Household,
  { from, to }: Span,
): { readonly begun: readonly Id[]; readonly kept: readonly Id[] } {
  const own = decisions
    .filter((record) => 'child' in record && record.child === child.id && !household.isUndone(record))
    .filter(({ at }) => {
      const day = formatISO(at, { representation: 'date' });
      return day >= from && day <= to;
    })
    .toReversed();
  const begun = own.flatMap((record) => (record.kind === 'setStarted' ? [record.set] : []));
  const kept = own.flatMap((record) => (record.kind === 'setKept' && record.kept ? [record.set] : []));
  return { begun: [...new Set(begun)], kept: [...new Set(kept)] };
}
