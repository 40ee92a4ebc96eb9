import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Child } from '../core/household/household';
import type { Step } from '../core/plan/step';
import type { Sat } from '../core/record/sat';
import type { Id } from '../core/record/stamp';
import { readActiveChild, writeActiveChild } from '../log/kiosk';
import type { Log } from '../log/log';
import type { Book } from './book';
import type { PlaySound } from './play-sound';
import type { Saver } from './saver';
import { followingTurn, type Screen, type Turn } from './screen';
import type { Sitter } from './sitter';
import type { Today } from './today';

/** The child's side: which screen is up, and what a tap on it does. */
export interface Kiosk {
  readonly screen: ReadonlySignal<Screen>;
  /** Whether a new version may be taken: nobody is in a sitting or behind the gate. */
  readonly isBetween: ReadonlySignal<boolean>;
  /** Whether the device may be in the wrong child's hands. */
  readonly hasOthers: ReadonlySignal<boolean>;
  start(): Promise<void>;
  pick(child: Id): void;
  /** Back to *Whose cloth?*; a sitting that stands open waits for its child. */
  notMe(): void;
  /** Goes on with the step that `next` shows. */
  goOn(step: Step): void;
  /** From the piece: straight on to the mending where there is one, else to what is next. */
  leavePiece(): void;
  /** A sitting has ended: after a sheet, and when the day is done, its piece is looked at. */
  sittingEnded(sat: Sat): void;
  /** Hands the device on: to the child whose turn is next, else to *Whose cloth?*. */
  handOver(): void;
  carryOn(): void;
  openCloth(): void;
  /** From the long cloth, or from handing over, to the child's own screen. */
  goBack(): void;
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
  readonly play: PlaySound;
}

export function createKiosk({ log, book, sitter, saver, today, play }: KioskParts): Kiosk {
  const active = signal<Id | null>(null);
  const over = signal<'none' | 'grownUps' | 'cloth' | 'handOver'>('none');
  /** The child whose piece is being looked at. */
  const looking = signal<Id | null>(null);
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
    const sheet = day.sheets.at(-1);
    if (sheet && looking.value === child.id) return { on: 'piece', child, sheet, day };
    const step = day.steps.find(({ what }) => what !== 'told' || !told.value.has(child.id));
    if (step && step.what !== 'piece') return { on: 'next', child, step, day };
    // Nothing was sat and nothing can be: no set is chosen.
    if (!sheet && !day.isSkipped) return { on: 'ask', child };
    const following = followingTurn(turns.value, child.id);
    return over.value === 'handOver' && following
      ? { on: 'handOver', to: following }
      : { on: 'rest', child, day, following };
  }

  function activate(child: Id | null): void {
    today.look();
    active.value = child;
    over.value = 'none';
    looking.value = null;
    saver.save(() => writeActiveChild(log, child));
  }

  function goOn(step: Step): void {
    if (active.value === null || sitter.open.value.has(active.value)) return;
    if (step.what === 'told') told.value = new Set(told.value).add(active.value);
    if (!('plan' in step)) return;
    play('start');
    sitter.begin(step.what === 'mending' ? { plan: step.plan, gave: step.gave } : { plan: step.plan });
  }

  function openRun() {
    return active.value === null ? undefined : sitter.open.value.get(active.value)?.run;
  }

  return {
    screen,
    isBetween: computed(() => sitter.open.value.size === 0 && over.value !== 'grownUps'),
    hasOthers: computed(() => turns.value.length > 1),
    async start() {
      active.value = await readActiveChild(log);
      isReady.value = true;
    },
    pick: activate,
    notMe: () => activate(null),
    goOn,
    leavePiece() {
      const step = active.value === null ? null : book.days.value.get(active.value)?.steps[0];
      looking.value = null;
      if (step?.what === 'mending') goOn(step);
    },
    sittingEnded({ child, purpose, day }) {
      if (purpose === 'practice' || day !== today.day.value) return;
      const isDone = isDayDone(child);
      if (purpose === 'sheet' || isDone) looking.value = child;
      if (isDone) play('finished');
    },
    handOver() {
      const isAnyone = active.value !== null && followingTurn(turns.value, active.value) !== null;
      if (isAnyone && over.value !== 'handOver') over.value = 'handOver';
      else activate(null);
    },
    carryOn: () => openRun()?.comeBack(),
    openCloth() {
      over.value = 'cloth';
    },
    goBack() {
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
