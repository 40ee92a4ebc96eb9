import type { FactId } from '../../core/fact/fact';
import { operations } from '../../core/fact/fact-list';
import type { Child, Household } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';
import type { FactSet } from '../../core/set/fact-set';
import { ownSet } from '../../core/set/own-set';
import { orderedSets } from '../../core/set/set-order';
import { setById } from '../../core/set/teaching-sets';

/** A teaching set or a parent's own, the removed ones too, so that old sittings keep their name. */
export function findSet(household: Household, id: Id): FactSet | null {
  const own = [...household.ownSets, ...household.removedSets].find((set) => set.id === id);
  return setById(id) ?? (own ? ownSet(own.id, own.name, own.facts) : null);
}

/** A set's name for a sentence. */
export function setName(household: Household, id: Id | null): string {
  if (id === null) return 'no set';
  return findSet(household, id)?.name ?? 'a set this version does not know';
}

/** The parent's own sets that stand. */
export function ownSets(household: Household): readonly FactSet[] {
  return household.ownSets.map((set) => ownSet(set.id, set.name, set.facts));
}

/** How many of a set's facts are ticked as known. */
export function tickedIn(set: FactSet, ticked: ReadonlySet<FactId>): number {
  return set.facts.filter((fact) => ticked.has(fact)).length;
}

/** What counts as known when a set is proposed: facts ticked, and those of the current and the kept sets. */
export function coveredFacts(household: Household, child: Child): ReadonlySet<FactId> {
  const sets = [...child.keptSets, ...(child.currentSet === null ? [] : [child.currentSet])];
  const facts = sets.flatMap((set) => findSet(household, set)?.facts ?? []);
  return new Set([...child.ticked, ...facts]);
}

/** The first teaching set, in the parent's order, with a fact that is not among those known; `null` when all are. */
export function proposedSet(known: ReadonlySet<FactId>, order: readonly Id[] = []): FactSet | null {
  const groups = operations.flatMap((op) => orderedSets(op, 9, order)).filter(({ kind }) => kind === 'group');
  return groups.find((set) => tickedIn(set, known) < set.facts.length) ?? null;
}
