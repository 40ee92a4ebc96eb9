import { useId } from 'preact/hooks';
import type { Household } from '../../core/household/household';
import type { Id } from '../../core/record/stamp';
import { type Page, place, turnTo } from '../place';
import { partWords } from './words';

/** The child a list is about; `null` for everyone. */
export function filteredChild({ children }: Household): Id | null {
  return children.some(({ id }) => id === place.value.child) ? place.value.child : null;
}

/** Whose part of a list is shown. */
export function ChildFilter({ household, page }: { readonly household: Household; readonly page: Page }) {
  const id = useId();
  return (
    <div class="field no-print">
      <label for={id}>{partWords.child}</label>
      <select
        id={id}
        value={filteredChild(household) ?? ''}
        onChange={(event) => turnTo(page, { child: event.currentTarget.value || null })}
      >
        <option value="">{partWords.everyone}</option>
        {household.children.map((child) => (
          <option key={child.id} value={child.id}>
            {child.name}
          </option>
        ))}
      </select>
    </div>
  );
}
