import type { History } from '../../core/household/history';
import type { Household } from '../../core/household/household';
import type { Decision } from '../../state/record-book/record-book';
import { nameOf } from '../children/name-of';
import { setName } from '../children/set-list';
import type { Names } from './decision-says';

/** Names out of the household, its history and the decisions themselves: also of a child whose adding was taken back. */
export function namesFor(
  household: Household,
  history: History | null,
  decisions: readonly Decision[],
): Names {
  const byId = new Map(decisions.map((record) => [record.id, record]));
  const added = new Map(
    decisions.flatMap((record) =>
      record.kind === 'childAdded' ? [[record.child, record.name] as const] : [],
    ),
  );
  const prompts = new Map(
    [...(history?.children.values() ?? [])].flatMap(({ sittings }) =>
      sittings.map(({ sat }) => [sat.id, sat.prompts] as const),
    ),
  );
  return {
    child: (id) =>
      household.children.some((child) => child.id === id)
        ? nameOf(household, id)
        : (added.get(id) ?? nameOf(household, id)),
    set: (id) => setName(household, id),
    prompts: (sitting) => prompts.get(sitting) ?? [],
    decision: (id) => byId.get(id) ?? null,
  };
}
