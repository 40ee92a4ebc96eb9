import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { GateStore } from '../core/gate/gate-data';
import type { RuledSat } from '../core/household/history';
import { effectiveHistory, noHistory } from '../core/household/history';
import type { SittingPlan } from '../core/record/sat';
import type { Id } from '../core/record/stamp';
import { refreshCheckpoint } from '../log/checkpoint';
import { clearTail } from '../log/clear-tail';
import { gateStore } from '../log/gate-store';
import type { Log } from '../log/log';
import { readHistoryOf } from '../log/reads';
import { type Book, createBook } from './book';
import type { Desk } from './desk';
import { createKiosk, type Kiosk } from './kiosk';
import { watchPage } from './page-watch';
import { startOnPaper } from './paper-start';
import type { PlaySound } from './play-sound';
import type { Ports } from './ports';
import { createSaver, type Saver } from './saver';
import { createSeat } from './seat';
import { createSitter, type Sitter } from './sitter';
import { askToPersist, type StorageState } from './storage-state';
import { type Today, watchToday } from './today';

/** One household on this device, open. */
export interface App {
  readonly kiosk: Kiosk;
  readonly desk: Desk;
  readonly gateStore: GateStore;
  /** Brings the parent's data into memory, and lets go of it. */
  openDesk(): Promise<void>;
  closeDesk(): void;
  /** A child's sittings from the first day on, for the long cloth. */
  readWholeCloth(child: Id): Promise<readonly RuledSat[]>;
  close(): void;
}

/** Opens a household over its log, and takes up whatever was being sat when it was last closed. */
export async function openApp(ports: Ports, play: PlaySound, log: Log): Promise<App> {
  const saver = createSaver(ports);
  const today = watchToday(ports);
  const book = createBook(log, today);
  await book.reload();

  const sitter = createSitter(log, ports, saver, {
    held: book.hold,
    sealed: book.take,
    ended: (sat) => {
      kiosk.sittingEnded(sat);
      if (sat.purpose === 'sheet') sumUpWhenIdle(log, sat.child);
    },
    bell: () => play('bell'),
    gave: (plan) => gaveBefore(book, plan),
    highestSeq: () => book.highestSeq(),
  });
  let hasBegun = false;
  const seat = createSeat(
    log.name,
    {
      isFree: () => sitter.open.peek().size === 0,
      got: async () => {
        // Once another window has sat here; at the start everything has just been read.
        if (hasBegun) await book.reload();
        await sitter.recover(today.look());
      },
      lost: sitter.letGo,
    },
    ports.locks,
  );
  const kiosk = createKiosk({ log, book, sitter, saver, seat, today, play });
  await meetEveryone(book);
  await seat.open();
  hasBegun = true;
  await kiosk.start();
  // Not awaited: the first screen is there, and no answer has been written behind the tail yet.
  void clearTail(log.name);
  for (const { id } of book.household.value.children) if (book.isLong(id)) sumUpWhenIdle(log, id);

  const stopWatching = watchPage(
    document,
    (why) => {
      for (const { run } of sitter.open.value.values()) run.leave(why);
    },
    () => today.look(),
  );
  const stopListening = log.news.listen(async (records) => {
    if (records) book.take(records);
    else await book.reload();
    await meetEveryone(book);
  });

  return {
    kiosk,
    desk: createDesk(log, ports, book, saver, sitter, kiosk, today, play),
    gateStore: gateStore(log),
    openDesk: () => book.openHistory(),
    closeDesk: book.closeHistory,
    async readWholeCloth(child) {
      // Where it cannot be stored, what was sat is in memory all the same.
      await saver.settled().catch(() => undefined);
      const records = await readHistoryOf(log, book.household.value, child);
      return (
        effectiveHistory(book.withHeld(records, child), book.household.value).children.get(child) ?? noHistory
      ).sittings;
    },
    close() {
      stopWatching();
      stopListening();
      seat.close();
      log.news.close();
    },
  };
}

/** Derived and disposable: a checkpoint that could not be moved up costs the next start a few milliseconds. */
function sumUpWhenIdle(log: Log, child: Id): void {
  whenIdle(async () => {
    const hasMore = await refreshCheckpoint(log, child).catch(() => false);
    if (hasMore) sumUpWhenIdle(log, child);
  });
}

function whenIdle(act: () => void): void {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(act);
  else setTimeout(act, 1000);
}

/** Every child's day is planned, also one that was added here or in another tab just now. */
async function meetEveryone(book: Book): Promise<void> {
  await Promise.all(book.household.value.children.map(({ id }) => book.meet(id)));
}

function createDesk(
  log: Log,
  ports: Ports,
  book: Book,
  saver: Saver,
  sitter: Sitter,
  kiosk: Kiosk,
  today: Today,
  play: PlaySound,
): Desk {
  const persisted = signal<boolean | null>(null);
  void askToPersist().then((answer) => {
    persisted.value = answer;
  });
  const storage: ReadonlySignal<StorageState> = computed(() => ({
    persisted: persisted.value,
    trouble: saver.trouble.value,
    waiting: saver.waiting.value,
    later: book.household.value.later + (book.history.value?.later ?? 0),
  }));
  return {
    household: book.household,
    history: book.history,
    today: today.day,
    days: book.days,
    storage,
    sitting: computed(() => new Set(sitter.open.value.keys())),
    record: async (drafts) => {
      const records = await book.record(drafts);
      await meetEveryone(book);
      return records;
    },
    async undo(target) {
      await book.record([{ kind: 'undone', target }]);
    },
    newId: () => ports.randomId(),
    startOnPaper: (day) => startOnPaper(day, ports),
    ringBell: () => play('bell'),
    openRecordBook: onceFetched(async () => {
      const { createRecordBook } = await import('./record-book/record-book');
      return createRecordBook({
        log,
        async seal() {
          for (const child of sitter.open.value.keys()) sitter.stop(child);
          await saver.settled();
        },
        async reload() {
          await book.reload();
          await meetEveryone(book);
        },
      });
    }),
    async heldFile() {
      for (const child of sitter.open.value.keys()) sitter.stop(child);
      const { heldFile } = await import('./held-file');
      return heldFile(log, book.inMemory());
    },
    async deleteChild(child) {
      sitter.stop(child);
      await saver.settled();
      const { deleteChild } = await import('../log/delete-child');
      await deleteChild(log, child);
      await book.reload();
    },
    async openStop(child) {
      sitter.stop(child);
      await saver.settled();
    },
    handOver: (child) => kiosk.giveTo(child),
    lock: () => kiosk.closeGrownUps(),
  };
}

/** Fetches a thing once; after a failure the next call tries again. */
function onceFetched<T>(fetch: () => Promise<T>): () => Promise<T> {
  let fetched: Promise<T> | null = null;
  return () => {
    fetched ??= fetch().catch((error: unknown) => {
      fetched = null;
      throw error;
    });
    return fetched;
  };
}

/** What was answered before to each prompt of a mending: today's plan knows, if it is still the same. */
function gaveBefore(book: Book, plan: SittingPlan): readonly (string | null)[] {
  const steps = book.days.value.get(plan.child)?.steps ?? [];
  const step = steps.find(({ what }) => what === 'mending');
  if (step?.what !== 'mending') return [];
  const gave = new Map(step.plan.prompts.map((prompt, place) => [prompt, step.gave[place] ?? null]));
  return plan.prompts.map((prompt) => gave.get(prompt) ?? null);
}
