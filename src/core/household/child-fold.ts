import type { FactId } from '../fact/fact';
import type { HouseholdRecord } from '../record/household-record';
import { type ChildSettings, defaultChildSettings, readChange } from '../record/settings';
import type { Id } from '../record/stamp';
import type { Child, Remark, SpokenCheck, Spread, Trial } from './household';

interface Draft {
  id: Id;
  added: boolean;
  name: string;
  edge: number;
  archived: boolean;
  currentSet: Id | null;
  keptSets: Set<Id>;
  ticked: Set<FactId>;
  settings: ChildSettings;
  trial: Trial | null;
  spread: Spread | null;
  spoken: SpokenCheck[];
  remarks: Map<string, Remark>;
}

/** Folds the records in force, in the log's order, into the children that were added; `gone` are removed sets. */
export function foldChildren(records: readonly HouseholdRecord[], gone: ReadonlySet<Id>): readonly Child[] {
  const drafts = new Map<Id, Draft>();
  const order: Id[] = [];
  for (const record of records) {
    if (!('child' in record)) continue;
    const draft = drafts.get(record.child) ?? emptyDraft(record.child);
    drafts.set(record.child, draft);
    if (record.kind === 'childAdded' && !draft.added) order.push(record.child);
    change(draft, record);
  }
  return order.flatMap((id) => finish(drafts.get(id), gone));
}

function emptyDraft(id: Id): Draft {
  return {
    id,
    added: false,
    name: '',
    edge: 0,
    archived: false,
    currentSet: null,
    keptSets: new Set(),
    ticked: new Set(),
    settings: defaultChildSettings,
    trial: null,
    spread: null,
    spoken: [],
    remarks: new Map(),
  };
}

function change(draft: Draft, record: HouseholdRecord): void {
  switch (record.kind) {
    case 'childAdded':
      draft.added = true;
      draft.name = record.name;
      draft.edge = record.edge;
      return;
    case 'childChanged':
      draft.name = record.name ?? draft.name;
      draft.edge = record.edge ?? draft.edge;
      draft.archived = record.archived ?? draft.archived;
      return;
    case 'setStarted':
      draft.currentSet = record.set;
      draft.spread = null;
      // A trial is of one set: facts of another can't be set beside its days.
      if (draft.trial && draft.trial.set !== record.set) draft.trial = { ...draft.trial, isStopped: true };
      return;
    case 'setKept':
      draft.keptSets.delete(record.set);
      if (record.kept) draft.keptSets.add(record.set);
      return;
    case 'factsTicked':
      for (const fact of record.facts) record.known ? draft.ticked.add(fact) : draft.ticked.delete(fact);
      return;
    case 'childSettingsChanged':
      draft.settings = { ...draft.settings, ...readChange(record.changes) };
      return;
    case 'trialDrawn': {
      const { id, set, plan, order } = record;
      draft.trial = { id, set, plan, order, isStopped: false };
      return;
    }
    case 'trialStopped':
      if (draft.trial?.id === record.trial) draft.trial = { ...draft.trial, isStopped: true };
      return;
    case 'spreadAsked':
      draft.spread = { id: record.id, ops: record.ops };
      return;
    case 'spokenChecked':
      draft.spoken.push({ day: record.day, answers: record.answers });
      return;
    case 'remarkWritten': {
      const { from, to, text } = record;
      draft.remarks.delete(`${from}/${to}`);
      if (text.trim() !== '') draft.remarks.set(`${from}/${to}`, { from, to, text });
      return;
    }
    case 'childDeleted':
    case 'setMade':
    case 'lineWritten':
    case 'yearBegun':
    case 'householdSettingsChanged':
    case 'ruled':
    case 'undone':
      return;
    default:
      record satisfies never;
  }
}

function finish(draft: Draft | undefined, gone: ReadonlySet<Id>): Child[] {
  if (!draft?.added) return [];
  const { added: _, ...child } = draft;
  const currentSet = child.currentSet !== null && gone.has(child.currentSet) ? null : child.currentSet;
  const keptSets = [...child.keptSets].filter((set) => set !== currentSet && !gone.has(set));
  const spoken = child.spoken.toSorted((x, y) => (x.day < y.day ? -1 : x.day > y.day ? 1 : 0));
  return [{ ...child, currentSet, keptSets, spoken, remarks: [...child.remarks.values()] }];
}
