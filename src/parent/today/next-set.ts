import type { Child, Household } from '../../core/household/household';
import type { FactSet } from '../../core/set/fact-set';
import { orderedSets } from '../../core/set/set-order';
import { coveredFacts, findSet, proposedSet, tickedIn } from '../children/set-list';

/**
 * What follows a child's current set: the next after it in its operation that holds anything new, then those passed over
 * before it, then the next of all.
 */
export function nextSet(household: Household, child: Child): FactSet | null {
  const covered = coveredFacts(household, child);
  const current = child.currentSet === null ? null : findSet(household, child.currentSet);
  const order = current?.op ? orderedSets(current.op, current.reach, child.settings.setOrder) : [];
  const at = order.findIndex(({ id }) => id === current?.id);
  const own = [...order.slice(at + 1), ...order.slice(0, Math.max(0, at))];
  const open = (set: FactSet) => set.id !== current?.id && tickedIn(set, covered) < set.facts.length;
  return (
    own.find((set) => set.kind === 'group' && open(set)) ?? proposedSet(covered, child.settings.setOrder)
  );
}
