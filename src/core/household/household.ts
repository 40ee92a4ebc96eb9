import type { FactId, Operation } from '../fact/fact';
import type { SatRulings } from '../marking/sat-rulings';
import type { Ruled, SpokenChecked, TrialDrawn } from '../record/household-record';
import type { ChildSettings, HouseholdSettings } from '../record/settings';
import type { Day, Id, Stamp } from '../record/stamp';

/** The clock trial drawn last. It acts on the plan until it is stopped, another set is started, or its days are sat. */
export interface Trial {
  readonly id: Id;
  readonly set: Id;
  readonly plan: TrialDrawn['plan'];
  readonly order: TrialDrawn['order'];
  readonly isStopped: boolean;
}

/** A spread asked for and not over: no set was started since. `id` is that of its record. */
export interface Spread {
  readonly id: Id;
  readonly ops: readonly Operation[];
}

/** A spoken check held. */
export interface SpokenCheck {
  readonly day: Day;
  readonly answers: SpokenChecked['answers'];
}

/** A parent's remarks on a span of days, both ends included. */
export interface Remark {
  readonly from: Day;
  readonly to: Day;
  readonly text: string;
}

/** A school year, up to the day before the next. */
export interface SchoolYear {
  readonly id: Id;
  readonly begins: Day;
  readonly name: string;
}

/** What is known of one child, the history apart. */
export interface Child {
  readonly id: Id;
  readonly name: string;
  readonly edge: number;
  readonly archived: boolean;
  readonly currentSet: Id | null;
  /** Sets moved on from, in the order they were kept; never the current one. */
  readonly keptSets: readonly Id[];
  /** Facts the parent says are known already. */
  readonly ticked: ReadonlySet<FactId>;
  readonly settings: ChildSettings;
  readonly trial: Trial | null;
  readonly spread: Spread | null;
  /** Spoken checks held, by day. */
  readonly spoken: readonly SpokenCheck[];
  /** The latest remarks on each span of days. */
  readonly remarks: readonly Remark[];
}

/** A parent's own set. */
export interface OwnSet {
  readonly id: Id;
  readonly name: string;
  readonly facts: readonly FactId[];
}

/** A ruling as history shows it. `undoneBy` are the undoings in force: taking back all of them re-does it. */
export interface RulingEntry {
  readonly record: Ruled;
  readonly active: boolean;
  readonly undoneBy: readonly Id[];
}

/** A sitting that a ruling gave to another child; it stays stored under `from` and `day`. */
export interface Move {
  readonly target: Id;
  readonly from: Id;
  readonly day: Day;
  readonly to: Id;
}

/** The fold of the household's records. */
export interface Household {
  /** In the order they were added, the archived among them. */
  readonly children: readonly Child[];
  /** Own sets in the order they were made, the removed apart. */
  readonly ownSets: readonly OwnSet[];
  readonly removedSets: readonly OwnSet[];
  readonly settings: HouseholdSettings;
  /** School years by the day they begin. */
  readonly years: readonly SchoolYear[];
  /** The parent's own lines for facts. */
  readonly lines: ReadonlyMap<FactId, string>;
  /** Every ruling on a child still here, oldest first. */
  readonly rulings: readonly RulingEntry[];
  readonly moves: readonly Move[];
  /** Children deleted for good. */
  readonly tombstones: ReadonlySet<Id>;
  /** How many records were left out because a later version of the app made them. */
  readonly later: number;
  rulingsOn(target: Id): SatRulings;
  /** Whether the record, of the household or of the history, has been taken back. */
  isUndone(record: Stamp): boolean;
  /** The undoings in force on a record. */
  undoneBy(target: Id): readonly Id[];
  /** The child a record belongs to after the rulings; `null` for what belongs to the household. */
  childOf(record: Stamp & { readonly kind: string }): Id | null;
}
