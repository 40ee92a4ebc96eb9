import { noRulings } from '../marking/sat-rulings';
import type { HouseholdRecord, SetMade } from '../record/household-record';
import { defaultHouseholdSettings, type HouseholdSettings } from '../record/settings';
import type { Id, Stamp } from '../record/stamp';
import { foldLines } from '../strategy/own-line';
import { foldChildren } from './child-fold';
import type { Household, SchoolYear } from './household';
import { inOrder } from './order';
import { foldRulings } from './rulings';
import { foldUndoing } from './undoing';

type Kind = HouseholdRecord['kind'];
type OfKind<K extends Kind> = Extract<HouseholdRecord, { kind: K }>;

const knownKinds: Record<Kind, true> = {
  childAdded: true,
  childChanged: true,
  childDeleted: true,
  setMade: true,
  setStarted: true,
  setKept: true,
  factsTicked: true,
  childSettingsChanged: true,
  householdSettingsChanged: true,
  trialDrawn: true,
  trialStopped: true,
  lineWritten: true,
  spokenChecked: true,
  spreadAsked: true,
  yearBegun: true,
  remarkWritten: true,
  ruled: true,
  undone: true,
};
const kinds: ReadonlySet<string> = new Set(Object.keys(knownKinds));

/** Folds the household's records; the same for any order of arrival and any duplicates. */
export function foldHousehold(records: readonly HouseholdRecord[]): Household {
  const { records: all, later } = inOrder(records, kinds);
  const { isUndone, undoneBy } = foldUndoing(ofKind(all, 'undone'));
  const inForce = all.filter((record) => !isUndone(record));
  const { byTarget, moves } = foldRulings(ofKind(inForce, 'ruled'));
  // A tombstone is permanent, so it is taken from all records: undoing one has no effect.
  const tombstones = new Set(ofKind(all, 'childDeleted').map(({ child }) => child));

  const childOf = (record: Stamp & { readonly kind: string }): Id | null => {
    if (!('child' in record) || record.kind === 'childDeleted') return null;
    const target = record.kind === 'ruled' && 'target' in record ? record.target : record.id;
    // Rows and mending go where their sheet goes.
    const sheet = 'of' in record ? byTarget.get(record.of as Id)?.child : null;
    return byTarget.get(target as Id)?.child ?? sheet ?? (record.child as Id);
  };
  const isHere = (record: HouseholdRecord) => !tombstones.has(childOf(record) ?? '');

  const here = inForce.filter(isHere);
  const { kept, removed } = foldSets(ofKind(here, 'setMade'));
  return {
    children: foldChildren(here, new Set(removed.map(({ id }) => id))),
    ownSets: kept,
    removedSets: removed,
    years: foldYears(ofKind(here, 'yearBegun')),
    lines: foldLines(ofKind(here, 'lineWritten')),
    settings: foldSettings(ofKind(here, 'householdSettingsChanged')),
    rulings: ofKind(all, 'ruled')
      .filter(isHere)
      .map((record) => ({ record, active: !isUndone(record), undoneBy: undoneBy(record.id) })),
    moves,
    tombstones,
    later,
    rulingsOn: (target) => byTarget.get(target) ?? noRulings,
    isUndone,
    undoneBy,
    childOf,
  };
}

function ofKind<K extends Kind>(records: readonly HouseholdRecord[], kind: K): OfKind<K>[] {
  return records.filter((record): record is OfKind<K> => record.kind === kind);
}

function foldSettings(changed: readonly OfKind<'householdSettingsChanged'>[]): HouseholdSettings {
  const settings = { ...defaultHouseholdSettings };
  for (const { changes } of changed) Object.assign(settings, changes);
  return settings;
}

function foldYears(begun: readonly OfKind<'yearBegun'>[]): readonly SchoolYear[] {
  const byDay = new Map(begun.map(({ id, day, name }) => [day, { id, begins: day, name }]));
  return [...byDay.values()].sort((x, y) => (x.begins < y.begins ? -1 : 1));
}

function foldSets(made: readonly SetMade[]) {
  const latest = new Map(made.map((record) => [record.set, record]));
  const sets = [...latest.values()].map(({ set: id, name, facts, removed = false }) => ({
    set: { id, name, facts },
    removed,
  }));
  return {
    kept: sets.filter(({ removed }) => !removed).map(({ set }) => set),
    removed: sets.filter(({ removed }) => removed).map(({ set }) => set),
  };
}
