import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import { foldHousehold } from '../core/household/fold-household';
import { effectiveHistory, type History, noHistory } from '../core/household/history';
import type { Household } from '../core/household/household';
import { type ChildDay, planDay } from '../core/plan/plan-day';
import type { HouseholdRecord } from '../core/record/household-record';
import { type Draft, type HistoryRecord, isOfHistory, type LogRecord } from '../core/record/record';
import type { Sat } from '../core/record/sat';
import type { Id } from '../core/record/stamp';
import { resumeSummary } from '../core/summary/summarize';
import { emptySummary } from '../core/summary/summary';
import { append } from '../log/append';
import { type Checkpoint, readTailWithCheckpoint } from '../log/checkpoint';
import type { Log } from '../log/log';
import { readHistory } from '../log/lots';
import { readHousehold } from '../log/reads';
import { dayFacts } from './day-facts';
import type { Today } from './today';

interface Tail {
  readonly checkpoint: Checkpoint | null;
  readonly records: ReadonlyMap<Id, HistoryRecord>;
}

/** The log in memory: the household whole, of each child that is met the tail, and all of it for the parent. */
export interface Book {
  readonly household: ReadonlySignal<Household>;
  readonly days: ReadonlySignal<ReadonlyMap<Id, ChildDay>>;
  readonly history: ReadonlySignal<History | null>;
  /** Reads the household again and the tails that are in memory; at start and after news without records. */
  reload(): Promise<void>;
  /** Brings a child's tail into memory, so that `days` holds its day. */
  meet(child: Id): Promise<void>;
  /** Whether far more of a child was read than its plan needs, as after a household came from a file. */
  isLong(child: Id): boolean;
  openHistory(): Promise<void>;
  closeHistory(): void;
  record(drafts: readonly Draft[]): Promise<readonly LogRecord[]>;
  /** Shows records that are stored, or being stored, already. */
  take(records: readonly LogRecord[]): void;
  /** Shows a sitting that is still on its way to the disk, and keeps showing it until it is there. */
  hold(sat: Sat): void;
  /** A child's records that were read, with what is held of it. */
  withHeld(records: readonly HistoryRecord[], child: Id): readonly HistoryRecord[];
  /** Everything in memory, stored or held. */
  inMemory(): readonly LogRecord[];
  /** The highest counter in memory. */
  highestSeq(): number;
}

/** A term's sittings: a checkpoint keeps a tail far below. */
const longTail = 300;

export function createBook(log: Log, today: Today): Book {
  const home = signal<ReadonlyMap<Id, HouseholdRecord>>(new Map());
  const tails = signal<ReadonlyMap<Id, Tail>>(new Map());
  const whole = signal<ReadonlyMap<Id, HistoryRecord> | null>(null);
  const held = new Map<Id, Sat>();

  const household = computed(() => foldHousehold([...home.value.values()]));
  const history = computed(() =>
    whole.value ? effectiveHistory([...whole.value.values()], household.value) : null,
  );
  const days = computed(() => {
    const planned = new Map<Id, ChildDay>();
    for (const child of household.value.children) {
      const tail = tails.value.get(child.id);
      if (tail) planned.set(child.id, planChild(child.id, tail));
    }
    return planned;
  });

  function planChild(id: Id, tail: Tail): ChildDay {
    const { children } = effectiveHistory([...tail.records.values()], household.value);
    const { sittings, changes } = children.get(id) ?? noHistory;
    const summary = resumeSummary(tail.checkpoint?.summary ?? emptySummary, sittings);
    const facts = dayFacts(household.value, id);
    return planDay({
      child: id,
      today: today.day.value,
      device: log.device,
      ...facts,
      change: changes.get(today.day.value) ?? {},
      sittings,
      summary,
    });
  }

  async function readTail(child: Id): Promise<void> {
    const { checkpoint, tail } = await readTailWithCheckpoint(log, household.value, child);
    tails.value = new Map(tails.value).set(child, { checkpoint, records: byId(withHeld(tail, child)) });
  }

  function withHeld(records: readonly HistoryRecord[], child: Id | null): readonly HistoryRecord[] {
    if (held.size === 0) return records;
    const stored = new Set(records.map(({ id }) => id));
    const missing = [...held.values()].filter((sat) => !stored.has(sat.id));
    return [...records, ...missing.filter((sat) => child === null || sat.child === child)];
  }

  async function readWhole(): Promise<ReadonlyMap<Id, HistoryRecord>> {
    return byId(withHeld(await readHistory(log), null));
  }

  async function reload(): Promise<void> {
    home.value = byId(await readHousehold(log));
    await Promise.all([...tails.value.keys()].map(readTail));
    if (whole.value) whole.value = await readWhole();
  }

  function take(records: readonly LogRecord[]): void {
    batch(() => {
      for (const record of records) {
        held.delete(record.id);
        if (isOfHistory(record)) takeHistory(record);
        else home.value = new Map(home.value).set(record.id, record);
      }
    });
    if (records.some(reachesBehind)) void Promise.all([...tails.value.keys()].map(readTail));
  }

  /** A ruling may reach behind a checkpoint or move a sitting to another child, and a sitting may be of an old day. */
  function reachesBehind(record: LogRecord): boolean {
    if (record.kind !== 'sat') return record.kind === 'ruled' || record.kind === 'undone';
    return record.day < (tails.value.get(record.child)?.checkpoint?.before ?? '');
  }

  function takeHistory(record: HistoryRecord): void {
    const tail = tails.value.get(record.child);
    if (tail)
      tails.value = new Map(tails.value).set(record.child, {
        ...tail,
        records: new Map(tail.records).set(record.id, record),
      });
    if (whole.value) whole.value = new Map(whole.value).set(record.id, record);
  }

  function inTails(): readonly HistoryRecord[] {
    return [...tails.value.values()].flatMap(({ records }) => [...records.values()]);
  }

  return {
    household,
    days,
    history,
    reload,
    take,
    meet: (child) => (tails.value.has(child) ? Promise.resolve() : readTail(child)),
    isLong: (child) => (tails.value.get(child)?.records.size ?? 0) > longTail,
    async openHistory() {
      await Promise.all(
        household.value.children.map(({ id }) => (tails.value.has(id) ? null : readTail(id))),
      );
      whole.value ??= await readWhole();
    },
    closeHistory() {
      whole.value = null;
    },
    hold(sat) {
      take([sat]);
      held.set(sat.id, sat);
    },
    withHeld,
    inMemory: () => [...home.value.values(), ...inTails(), ...(whole.value?.values() ?? [])],
    highestSeq() {
      return [...home.value.values(), ...inTails()].reduce((highest, { seq }) => Math.max(highest, seq), 0);
    },
    async record(drafts) {
      const records = await append(log, drafts);
      take(records);
      return records;
    },
  };
}

function byId<R extends { readonly id: Id }>(records: readonly R[]): ReadonlyMap<Id, R> {
  return new Map(records.map((record) => [record.id, record]));
}
