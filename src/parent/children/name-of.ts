import type { Child, Household } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';

/** The child with an id; `null` once it has been deleted. */
export function findChild(household: Household, id: Id): Child | null {
  return household.children.find((child) => child.id === id) ?? null;
}

/** The child's name for a sentence. */
export function nameOf(household: Household, id: Id): string {
  return findChild(household, id)?.name ?? 'a child no longer here';
}
