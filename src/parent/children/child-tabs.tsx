import type { Child, Household } from '../../core/household/household';
import type { Desk } from '../../state/desk';
import { type Page, place, turnTo } from '../place';
import { childrenWords } from './words';

export interface ChildTabsProps {
  readonly desk: Desk;
  readonly page: Page;
}

/** The child a page is about: the one looked at last, or the first. */
export function chosenChild(household: Household): Child | null {
  const { children } = household;
  return (
    children.find((child) => child.id === place.value.child) ??
    children.find((child) => !child.archived) ??
    children[0] ??
    null
  );
}

/** Whose part of a page is shown. */
export function ChildTabs({ desk, page }: ChildTabsProps) {
  const { children } = desk.household.value;
  const chosen = chosenChild(desk.household.value);
  if (children.length < 2) return null;
  return (
    <nav class="child-tabs no-print" aria-label={childrenWords.tabs}>
      {children.map((child) => (
        <button
          key={child.id}
          type="button"
          aria-current={child.id === chosen?.id ? 'true' : undefined}
          onClick={() => turnTo(page, { child: child.id })}
        >
          {child.name}
          {child.archived ? childrenWords.archivedMark : ''}
        </button>
      ))}
    </nav>
  );
}
