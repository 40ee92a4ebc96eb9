import type { FactId } from '../core/fact/fact';
import type { Household, SpokenCheck, Spread, Trial } from '../core/household/household';
import { type ChildSettings, defaultChildSettings } from '../core/record/settings';
import type { Id } from '../core/record/stamp';
import { setById } from '../core/set/teaching-sets';

/** What a child learns now and what it keeps; a set that is gone counts as none. */
export interface DayFacts {
  readonly settings: ChildSettings;
  readonly set: { readonly id: Id; readonly facts: readonly FactId[] } | null;
  readonly kept: readonly FactId[];
  readonly trial: Trial | null;
  readonly spread: Spread | null;
  readonly ticked: ReadonlySet<FactId>;
  /** Spoken checks held, by day. */
  readonly spoken: readonly SpokenCheck[];
}

const nobody: DayFacts = {
  settings: defaultChildSettings,
  set: null,
  kept: [],
  trial: null,
  spread: null,
  ticked: new Set(),
  spoken: [],
};

export function dayFacts(household: Household, id: Id): DayFacts {
  const child = household.children.find((other) => other.id === id);
  if (!child) return nobody;
  const kept = new Set(child.ticked);
  for (const set of child.keptSets) for (const fact of factsOfSet(household, set) ?? []) kept.add(fact);
  const facts = child.currentSet === null ? null : factsOfSet(household, child.currentSet);
  return {
    settings: child.settings,
    set: facts && child.currentSet !== null ? { id: child.currentSet, facts } : null,
    kept: [...kept],
    trial: child.trial,
    spread: child.spread,
    ticked: child.ticked,
    spoken: child.spoken,
  };
}

function factsOfSet(household: Household, id: Id): readonly FactId[] | null {
  return setById(id)?.facts ?? household.ownSets.find((set) => set.id === id)?.facts ?? null;
}
