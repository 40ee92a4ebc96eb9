import type { ReadonlySignal } from '@preact/signals';
import type { History } from '../core/household/history';
import type { Household } from '../core/household/household';
import type { PaperStart } from '../core/paper/paper-sat';
import type { ChildDay } from '../core/plan/plan-day';
import type { Draft, LogRecord } from '../core/record/record';
import type { Day, Id } from '../core/record/stamp';
import type { RecordBook } from './record-book/record-book';
import type { StorageState } from './storage-state';

/** What the parent's side reads and does. */
export interface Desk {
  readonly household: ReadonlySignal<Household>;
  /** All children's days; `null` while they are being read. */
  readonly history: ReadonlySignal<History | null>;
  readonly today: ReadonlySignal<Day>;
  readonly days: ReadonlySignal<ReadonlyMap<Id, ChildDay>>;
  readonly storage: ReadonlySignal<StorageState>;
  /** Children with a sitting that stands open. */
  readonly sitting: ReadonlySignal<ReadonlySet<Id>>;
  /** Appends and shows; rejects with a LogTroubleError, and then nothing was changed. */
  record(drafts: readonly Draft[]): Promise<readonly LogRecord[]>;
  /** Takes a record back; an undoing too, which brings it back. */
  undo(target: Id): Promise<void>;
  newId(): Id;
  /** Where what was done on paper on a day belongs. */
  startOnPaper(day: Day): PaperStart;
  /** The soft bell of a child's side, for a clock the parent runs. */
  ringBell(): void;
  /** Files out and in; the code for it is fetched at the first call. */
  openRecordBook(): Promise<RecordBook>;
  /** Everything this page knows, stored or only held, as a file; what is being sat is ended first. */
  heldFile(): Promise<File>;
  deleteChild(child: Id): Promise<void>;
  /** Ends a sitting that stands open; what was answered stays. */
  openStop(child: Id): Promise<void>;
  /** Locks, and gives the device to a child, or to whoever's turn it is. */
  handOver(child: Id | null): void;
  lock(): void;
}
