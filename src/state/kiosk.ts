import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Child } from '../core/household/household';
import type { ChildDay } from '../core/plan/plan-day';
import type { Step } from '../core/plan/step';
import type { DayChange } from '../core/record/household-record';
import type { Sat } from '../core/record/sat';
import type { Id } from '../core/record/stamp';
import { readActiveChild, writeActiveChild } from '../log/kiosk';
import type { Log } from '../log/log';
import type { Book } from './book';
import type { PlaySound } from './play-sound';
import type { Saver } from './saver';
import { followingTurn, type Screen, type Turn } from './screen';
import type { Seat } from './seat';
import type { Sitter } from './sitter';
import type { Today } from './today';

/** The child's side: which screen is up, and what a tap on it does. */
export interface Kiosk {
  readonly screen: ReadonlySignal<Screen>;
  /** Whose cloth the device is at, behind the gate too. */
  readonly child: ReadonlySignal<Id | null>;
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
  /** Passes over the cards that are the child's choice, to what comes after them. */
  goStraight(): void;
  /** From what the first try said to what is next. */
  leaveYours(): void;
  /** One more sheet on a day that is done or free. */
  again(): void;
  /** From the piece: straight on to the mending where there is one, else to what is next. */
  leavePiece(): void;
  /** A sitting has ended: a sheet and the day's end show the piece. */
  sittingEnded(sat: Sat): void;
  /** Hands the device on: to the child whose turn is next, else to *Whose cloth?*. */
  handOver(): void;
  carryOn(): void;
  /** Takes the seat from another window. */
  sitHere(): void;
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
  readonly seat: Seat;
  readonly today: Today;
  readonly play: PlaySound;
}

type Choice = keyof Pick<DayChange, 'straight' | 'heard'>;

/** Nothing was sat and nothing can be before a grown-up has chosen a set. */
function lacksSet({ needs }: ChildDay): boolean {
  return needs.some(({ what }) => what === 'noSet' || what === 'spreadSat');
}

export function createKiosk({ log, book, sitter, saver, seat, today, play }: KioskParts): Kiosk {
  const active = signal<Id | null>(null);
  const over = signal<'none' | 'grownUps' | 'cloth' | 'handOver'>('none');
  /** The child whose piece is being looked at. */
  const looking = signal<Id | null>(null);
  const told = signal<ReadonlySet<Id>>(new Set());
  /** What children chose on screens that sit nothing: in force at once, and in the log as soon as it is stored. */
  const chosen = signal<ReadonlySet<string>>(new Set());
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
    if (!seat.isHere.value) return { on: 'elsewhere', mayTake: seat.mayTake.value };
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
    if (day.firstTry?.isToHear && !hasChosen(day, 'heard'))
      return { on: 'yours', child, facts: day.firstTry.yours };
    const step = nextStep(day);
    if (step && step.what !== 'piece') return { on: 'next', child, step, day };
    if (!sheet && !day.isDone && !day.isFree && !day.isSkipped && lacksSet(day)) return { on: 'ask', child };
    const following = followingTurn(turns.value, child.id);
    return over.value === 'handOver' && following
      ? { on: 'handOver', to: following }
      : { on: 'rest', child, day, following };
  }

  function nextStep(day: ChildDay): Step | undefined {
    return day.steps.find((step) => {
      if (step.what === 'told') return !told.value.has(day.child);
      return step.what !== 'cards' || !step.isChoice || !hasChosen(day, 'straight');
    });
  }

  function hasChosen({ child, today: on }: ChildDay, choice: Choice): boolean {
    return chosen.value.has(`${child} ${on} ${choice}`);
  }

  function choose(day: ChildDay, choice: Choice): void {
    const { child, today: on } = day;
    chosen.value = new Set(chosen.value).add(`${child} ${on} ${choice}`);
    const change = { kind: 'dayChanged', child, day: on, change: { [choice]: true } } as const;
    saver.save(() => book.record([change]));
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

  function activeDay() {
    return active.value === null ? undefined : book.days.value.get(active.value);
  }

  function openRun() {
    return active.value === null ? undefined : sitter.open.value.get(active.value)?.run;
  }

  return {
    screen,
    child: active,
    isBetween: computed(() => sitter.open.value.size === 0 && over.value !== 'grownUps'),
    hasOthers: computed(() => turns.value.length > 1),
    async start() {
      active.value = await readActiveChild(log);
      isReady.value = true;
    },
    pick: activate,
    notMe: () => activate(null),
    goOn,
    goStraight() {
      const day = activeDay();
      if (!day) return;
      choose(day, 'straight');
      const step = nextStep(day);
      if (step?.what === 'sheet') goOn(step);
    },
    leaveYours() {
      const day = activeDay();
      if (day) choose(day, 'heard');
    },
    again() {
      const plan = activeDay()?.again;
      if (plan) goOn({ what: 'sheet', plan });
    },
    leavePiece() {
      const step = activeDay()?.steps[0];
      looking.value = null;
      if (step?.what === 'mending') goOn(step);
    },
    sittingEnded({ child, purpose, day }) {
      if (day !== today.day.value) return;
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
    sitHere: seat.take,
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
