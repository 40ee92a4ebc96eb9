import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Child } from '../core/household/household';
import type { Step } from '../core/plan/step';
import type { Id } from '../core/record/stamp';
import { readActiveChild, writeActiveChild } from '../log/kiosk';
import type { Log } from '../log/log';
import type { Book } from './book';
import type { Saver } from './saver';
import { followingTurn, type Screen, type Turn } from './screen';
import type { Sitter } from './sitter';
import type { Today } from './today';

/** The child's side: which screen is up, and what a tap on it does. */
export interface Kiosk {
  readonly screen: ReadonlySignal<Screen>;
  /** Whether a new version may be taken: nobody is in a sitting or behind the gate. */
  readonly isBetween: ReadonlySignal<boolean>;
  start(): Promise<void>;
  pick(child: Id): void;
  /** Goes on with the step that `next` shows. */
  goOn(step: Step): void;
  carryOn(): void;
  openCloth(): void;
  closeCloth(): void;
  openGrownUps(): void;
  /** Leaves the grown-ups' side; with a child the device is given to it, with `null` to whoever's turn it is. */
  giveTo(child: Id | null): void;
  closeGrownUps(): void;
}

/** What the kiosk stands on. */
export interface KioskParts {
  readonly log: Log;
  readonly book: Book;
  readonly sitter: Sitter;
  readonly saver: Saver;
  readonly today: Today;
  readonly playStart: () => void;
}

export function createKiosk({ log, book, sitter, saver, today, playStart }: KioskParts): Kiosk {
  const active = signal<Id | null>(null);
  const over = signal<'none' | 'grownUps' | 'cloth'>('none');
  const told = signal<ReadonlySet<Id>>(new Set());
  const isReady = signal(false);

  const turns = computed<readonly Turn[]>(() =>
    book.household.value.children
      .filter(({ archived }) => !archived)
      .map((child) => ({ child, isDone: isDayDone(child.id) })),
  );

  function isDayDone(child: Id): boolean {
    const day = book.days.value.get(child);
    return (
      day !== undefined && !sitter.open.value.has(child) && day.steps.every(({ what }) => what === 'piece')
    );
  }

  const screen = computed<Screen>(() => {
    if (!isReady.value) return { on: 'starting' };
    if (over.value === 'grownUps') return { on: 'grownUps' };
    if (turns.value.length === 0) return { on: 'welcome' };
    const turn = turns.value.find(({ child }) => child.id === active.value);
    return turn ? screenOf(turn.child) : { on: 'whose', children: turns.value };
  });

  function screenOf(child: Child): Screen {
    const open = sitter.open.value.get(child.id);
    if (open) return open.run.isAway.value ? { on: 'away', child } : { on: 'sitting', child, run: open.run };
    if (over.value === 'cloth') return { on: 'cloth', child };
    const day = book.days.value.get(child.id);
    if (!day) return { on: 'starting' };
    const following = followingTurn(turns.value, child.id);
    const step = day.steps.find(({ what }) => what !== 'told' || !told.value.has(child.id));
    if (!step) return { on: 'rest', child, following };
    return step.what === 'piece' ? { on: 'piece', child, day, following } : { on: 'next', child, step, day };
  }

  function activate(child: Id | null): void {
    today.look();
    active.value = child;
    over.value = 'none';
    saver.save(() => writeActiveChild(log, child));
  }

  function openRun() {
    return active.value === null ? undefined : sitter.open.value.get(active.value)?.run;
  }

  return {
    screen,
    isBetween: computed(() => sitter.open.value.size === 0 && over.value !== 'grownUps'),
    async start() {
      active.value = await readActiveChild(log);
      isReady.value = true;
    },
    pick: activate,
    goOn(step) {
      if (active.value === null || sitter.open.value.has(active.value)) return;
      if (step.what === 'told') told.value = new Set(told.value).add(active.value);
      if (!('plan' in step)) return;
      playStart();
      sitter.begin(step.what === 'mending' ? { plan: step.plan, gave: step.gave } : { plan: step.plan });
    },
    carryOn: () => openRun()?.comeBack(),
    openCloth() {
      over.value = 'cloth';
    },
    closeCloth() {
      over.value = 'none';
    },
    openGrownUps() {
      openRun()?.leave('stopped');
      over.value = 'grownUps';
    },
    closeGrownUps() {
      today.look();
      over.value = 'none';
    },
    giveTo: activate,
  };
}
