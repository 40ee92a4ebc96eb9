import { computed, signal } from '@preact/signals';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, noHistory } from '../../src/core/household/history';
import { planDay } from '../../src/core/plan/plan-day';
import type { HouseholdRecord } from '../../src/core/record/household-record';
import { type Draft, isOfHistory, type LogRecord } from '../../src/core/record/record';
import type { Id } from '../../src/core/record/stamp';
import { resumeSummary } from '../../src/core/summary/summarize';
import { emptySummary } from '../../src/core/summary/summary';
import { dayFacts } from '../../src/state/day-facts';
import type { Desk } from '../../src/state/desk';
import type { StorageState } from '../../src/state/storage-state';

/** A desk over records in memory, folded and planned by the real core; and what was asked of it. */
export interface FakeDesk extends Desk {
  readonly records: () => readonly LogRecord[];
  /** Every draft recorded, in order. */
  readonly drafts: Draft[];
  readonly handedTo: (Id | null)[];
  readonly stopped: Id[];
  readonly locks: () => number;
  readonly rings: () => number;
  readonly setStorage: (state: Partial<StorageState>) => void;
  readonly setSitting: (children: readonly Id[]) => void;
  /** The next things to be recorded fail like this; `null` lets them through again. */
  refuse(what: string | null): void;
}

export function fakeDesk(
  today = '2026-11-25',
  beginWith: readonly Draft[] = [],
  stored: readonly LogRecord[] = [],
): FakeDesk {
  const records = signal<readonly LogRecord[]>(stored);
  const day = signal(today);
  const storage = signal<StorageState>({ persisted: true, trouble: null, waiting: 0, later: 0 });
  const sitting = signal<ReadonlySet<Id>>(new Set());
  const drafts: Draft[] = [];
  const handedTo: (Id | null)[] = [];
  const stopped: Id[] = [];
  let locks = 0;
  let rings = 0;
  let ids = stored.length;
  let refusal: string | null = null;

  const household = computed(() =>
    foldHousehold(records.value.filter((record): record is HouseholdRecord => !isOfHistory(record))),
  );
  const history = computed(() => effectiveHistory(records.value.filter(isOfHistory), household.value));
  const days = computed(
    () =>
      new Map(
        household.value.children.map(({ id }) => {
          const { sittings, changes } = history.value.children.get(id) ?? noHistory;
          const change = changes.get(day.value) ?? {};
          const summary = resumeSummary(emptySummary, sittings);
          return [
            id,
            planDay({
              child: id,
              today: day.value,
              ...dayFacts(household.value, id),
              change,
              sittings,
              summary,
            }),
          ] as const;
        }),
      ),
  );

  function append(some: readonly Draft[]): readonly LogRecord[] {
    const made = some.map((draft) => {
      ids += 1;
      return {
        ...draft,
        id: `record-${ids}`,
        v: 1,
        seq: ids,
        device: 'here',
        at: 1_764_000_000_000,
      } as LogRecord;
    });
    records.value = [...records.value, ...made];
    return made;
  }

  append(beginWith);

  return {
    household,
    history,
    today: day,
    days,
    storage,
    sitting,
    records: () => records.value,
    drafts,
    handedTo,
    stopped,
    locks: () => locks,
    rings: () => rings,
    setStorage(state) {
      storage.value = { ...storage.value, ...state };
    },
    setSitting(children) {
      sitting.value = new Set(children);
    },
    refuse(what) {
      refusal = what;
    },
    async record(some) {
      if (refusal) throw Object.assign(new Error(refusal), { trouble: { what: refusal } });
      drafts.push(...some);
      return append(some);
    },
    async undo(target) {
      const draft: Draft = { kind: 'undone', target };
      drafts.push(draft);
      append([draft]);
    },
    newId() {
      ids += 1;
      return `made-${ids}`;
    },
    openRecordBook: () => Promise.reject(new Error('A desk in memory makes no files.')),
    startOnPaper: (onDay) => ({ day: onDay, offsetMin: 0, zone: 'UTC', startedAt: Date.parse(onDay) }),
    ringBell() {
      rings += 1;
    },
    heldFile: async () => new File(['{}'], 'held.json'),
    async deleteChild(child) {
      append([{ kind: 'childDeleted', child }]);
    },
    async openStop(child) {
      stopped.push(child);
    },
    handOver(child) {
      handedTo.push(child);
    },
    lock() {
      locks += 1;
    },
  };
}
