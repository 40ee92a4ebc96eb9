import type { Id } from '../../core/record/stamp';
import type { Desk } from '../../state/desk';
import type { Acting } from '../acting';
import { childDrafts, newChild } from './new-child';
import { setupStep } from './progress';

/** Records the whole new child at once and goes to the last step; without a set it begins with a spread. */
export function useRecordChild(desk: Desk, { act }: Acting): (set: Id | null) => Promise<boolean> {
  return (set) =>
    act(async () => {
      const child = desk.newId();
      const made = await desk.record(childDrafts(child, newChild.name.value, set));
      setupStep.value = { at: 'done', child, records: made.map(({ id }) => id) };
    });
}
