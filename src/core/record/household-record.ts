import type { FactId, Operation } from '../fact/fact';
import type { ChildSettings, HouseholdSettings, SettingsChange } from './settings';
import type { Day, Id, Stamp } from './stamp';

/** A parent's decision on a sitting, each a record of its own and each undoable. `place` counts from 0. */
export type Ruling =
  | { readonly what: 'accept'; readonly place: number }
  | { readonly what: 'slip'; readonly place: number; readonly slip: boolean }
  | { readonly what: 'void' }
  | { readonly what: 'wrongChild'; readonly child: Id }
  | { readonly what: 'notOwnWork' }
  | { readonly what: 'bandAnyway' }
  /** How many extra rows this sitting brings, whatever was proposed: 0 waives them. */
  | { readonly what: 'rows'; readonly rows: number };

/**
 * A step a parent hands to another day. It is left out of this one and comes again by its own rule, never twice:
 * `lookBack` gives a plain sheet its place, `mending` takes the twins along.
 */
export type LaterStep = 'firstTry' | 'cards' | 'sheet' | 'lookBack' | 'rows' | 'mending' | 'lines';

/** What a parent changes for one child and one day; it ends at night. */
export interface DayChange {
  readonly timed?: boolean;
  readonly length?: number;
  readonly skip?: boolean;
  /** There is school, whatever the day of the week. */
  readonly school?: boolean;
  /** The child, asked, went straight to the sheet. */
  readonly straight?: boolean;
  /** The child went on from what its first try said. */
  readonly heard?: boolean;
  /** Steps handed to another day. */
  readonly later?: readonly LaterStep[];
}

/** What a day of a clock trial is: the clock seen as its thread, or no clock. */
export type TrialKind = 'thread' | 'noClock';

/** How a fact asked aloud came. */
export type SpokenAnswer = 'right' | 'helped' | 'notYet';

type Of<K extends string, Body> = Stamp & { readonly kind: K } & Body;

export type ChildAdded = Of<
  'childAdded',
  { readonly child: Id; readonly name: string; readonly edge: number }
>;
export type ChildChanged = Of<
  'childChanged',
  { readonly child: Id; readonly name?: string; readonly edge?: number; readonly archived?: boolean }
>;
/** The tombstone: no name, permanent, always wins. */
export type ChildDeleted = Of<'childDeleted', { readonly child: Id }>;
/** A parent's own set, made or changed; the latest of a set's records holds. */
export type SetMade = Of<
  'setMade',
  { readonly set: Id; readonly name: string; readonly facts: readonly FactId[]; readonly removed?: boolean }
>;
export type SetStarted = Of<'setStarted', { readonly child: Id; readonly set: Id }>;
export type SetKept = Of<'setKept', { readonly child: Id; readonly set: Id; readonly kept: boolean }>;
/** Facts the parent ticks as known already on the fact grid, or unticks. */
export type FactsTicked = Of<
  'factsTicked',
  { readonly child: Id; readonly facts: readonly FactId[]; readonly known: boolean }
>;
export type ChildSettingsChanged = Of<
  'childSettingsChanged',
  { readonly child: Id; readonly changes: SettingsChange }
>;
export type HouseholdSettingsChanged = Of<
  'householdSettingsChanged',
  { readonly changes: Partial<HouseholdSettings> }
>;
/** `child` and `targetDay` are the target's own, so that it can be found without reading the history. */
export type Ruled = Of<
  'ruled',
  { readonly child: Id; readonly target: Id; readonly targetDay: Day; readonly ruling: Ruling }
>;
/** A clock trial begun: the plan asked for, the set it is about, and its days' kinds in the order they were drawn. */
export type TrialDrawn = Of<
  'trialDrawn',
  {
    readonly child: Id;
    readonly set: Id;
    readonly plan: 'eight' | 'ten' | 'twelveInPairs';
    readonly order: readonly TrialKind[];
  }
>;
/** A trial given up before its last day; `trial` is the id of the record that drew it. */
export type TrialStopped = Of<'trialStopped', { readonly child: Id; readonly trial: Id }>;
/** A short untimed spread over two days, over the groups of some operations; over once a set is started. */
export type SpreadAsked = Of<'spreadAsked', { readonly child: Id; readonly ops: readonly Operation[] }>;
/** A parent's own line for a fact, shown in place of the tool's with a new fact; `null` brings the tool's back. */
export type LineWritten = Of<'lineWritten', { readonly fact: FactId; readonly line: string | null }>;
/** What a parent heard at a spoken check: each fact right, right with help, or not yet. */
export type SpokenChecked = Of<
  'spokenChecked',
  {
    readonly child: Id;
    readonly day: Day;
    readonly answers: readonly { readonly fact: FactId; readonly came: SpokenAnswer }[];
  }
>;
/** A school year begun: a boundary for the reports, under the name a parent gives it. */
export type YearBegun = Of<'yearBegun', { readonly day: Day; readonly name: string }>;
/** A parent's own remarks on a child's work from a day to a day, both included; empty takes them away. */
export type RemarkWritten = Of<
  'remarkWritten',
  { readonly child: Id; readonly from: Day; readonly to: Day; readonly text: string }
>;
/** Takes back a household record, or another undoing. */
export type Undone = Of<'undone', { readonly target: Id }>;
export type DayChanged = Of<
  'dayChanged',
  { readonly child: Id; readonly day: Day; readonly change: DayChange }
>;

/** How a sheet stands on paper: across, `7 × 8 =`, or one number over the other. */
export interface PaperShape {
  /** In facts. */
  readonly length: number;
  readonly layout: ChildSettings['layout'];
  /** Facts of kept sets are mixed in, so that set and seed alone do not give the sheet. */
  readonly hasKept: boolean;
}

/**
 * A sheet printed on `day` to be done on `forDay`, often a later one: the history ends with what has happened. Its facts
 * are as printed, whatever becomes of the set.
 */
export type SheetPrinted = Of<
  'sheetPrinted',
  {
    readonly child: Id;
    readonly day: Day;
    readonly forDay: Day;
    readonly set: Id;
    readonly seed: number;
    readonly shape: PaperShape;
    readonly facts: readonly FactId[];
  }
>;

/** The small part of the log that is read whole at every start. */
export type HouseholdRecord =
  | ChildAdded
  | ChildChanged
  | ChildDeleted
  | SetMade
  | SetStarted
  | SetKept
  | FactsTicked
  | ChildSettingsChanged
  | HouseholdSettingsChanged
  | TrialDrawn
  | TrialStopped
  | SpreadAsked
  | LineWritten
  | SpokenChecked
  | YearBegun
  | RemarkWritten
  | Ruled
  | Undone;
