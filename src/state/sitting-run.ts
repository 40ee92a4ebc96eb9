import { batch, type ReadonlySignal, signal } from '@preact/signals';
import type { PromptId } from '../core/fact/prompt';
import type { Away, AwayReason, Key, OnsetSource, SittingPlan, Via, Visit } from '../core/record/sat';
import {
  beginSitting,
  type Happening,
  keptAway,
  keptVisit,
  resumeSitting,
  type SittingEvent,
  type SittingState,
  stepSitting,
} from '../core/sitting/machine';
import type { Ports } from './ports';
import { startClock } from './sitting-clock';

/** The card on the screen; a new `showing` is a new card, even of the same fact. */
export interface CardView {
  readonly showing: number;
  readonly prompt: PromptId;
  /** The whole fact is shown, answer and all. */
  readonly whole: boolean;
  /** What was answered on the sheet, while it is being mended. */
  readonly wrote: string | null;
}

/** The allowed time on the screen; `null` where there is no clock to see. */
export interface ThreadView {
  readonly allowanceMs: number;
  /** Ms on the sitting's clock already drawn through when `running` began. */
  readonly elapsedMs: number;
  readonly running: boolean;
}

/** What a run tells those who save, sound and move on. */
export interface RunListener {
  visitClosed(index: number, visit: Visit): void;
  awayNoted(index: number, away: Away): void;
  bell(): void;
  ended(state: SittingState): void;
}

/** A sitting on the screen: the pure machine joined to time and to signals. */
export interface SittingRun {
  readonly plan: SittingPlan;
  readonly card: ReadonlySignal<CardView>;
  readonly entry: ReadonlySignal<string>;
  readonly thread: ReadonlySignal<ThreadView | null>;
  /** The allowed time has ended; the card on the screen may still be finished. */
  readonly rang: ReadonlySignal<boolean>;
  /** Interrupted: the card waits to be taken up again. */
  readonly isAway: ReadonlySignal<boolean>;
  /** `timeStamp` is the event's own: when the key fell. */
  press(key: Key, timeStamp: number, via: Via): void;
  shown(showing: number, timeStamp: number, by: OnsetSource): void;
  leave(why: AwayReason): void;
  comeBack(): void;
  stop(): void;
  /** Lets go of the timer; the machine is left as it stands. */
  drop(): void;
}

/** What a journal kept of a sitting broken off. */
export interface Resumed {
  readonly visits: readonly Visit[];
  readonly away: readonly Away[];
  readonly elapsedMs: number;
}

/** What is sat; `gave` is what was answered before to each prompt, where the sitting mends. */
export interface RunSource {
  readonly plan: SittingPlan;
  readonly gave?: readonly (string | null)[];
}

export function startRun(
  { plan, gave = [] }: RunSource,
  ports: Ports,
  listener: RunListener,
  resumed: Resumed | null = null,
): SittingRun {
  const clock = startClock(ports, resumed?.elapsedMs ?? 0);
  let state = resumed ? resumeSitting(plan, resumed.visits, resumed.away) : beginSitting(plan);
  let cancelBell: (() => void) | null = null;

  const card = signal(viewCard(state, gave));
  const entry = signal(state.entry);
  const thread = signal(viewThread(state, clock.now()));
  const rang = signal(state.rang);
  const isAway = signal(state.phase === 'away');

  function send(event: SittingEvent): void {
    const before = state;
    const result = stepSitting(state, event);
    state = result.state;
    batch(() => {
      if (state.showing !== before.showing || state.shown !== before.shown)
        card.value = viewCard(state, gave);
      entry.value = state.entry;
      rang.value = state.rang;
      isAway.value = state.phase === 'away';
      if (state.bellAtMs !== before.bellAtMs || state.clockGone !== before.clockGone) {
        thread.value = viewThread(state, clock.now());
        armBell();
      }
    });
    for (const happening of result.happened) tell(happening);
  }

  function tell(happening: Happening): void {
    switch (happening.what) {
      case 'visitClosed':
      case 'visitAmended': {
        const visit = state.visits[happening.index];
        if (visit) listener.visitClosed(happening.index, keptVisit(plan, visit));
        return;
      }
      case 'bell':
        listener.bell();
        return;
      case 'ended':
        cancelBell?.();
        listener.ended(state);
        return;
      case 'entered':
      case 'cardOpened':
        return;
      default:
        happening satisfies never;
    }
  }

  function armBell(): void {
    cancelBell?.();
    cancelBell = null;
    if (state.bellAtMs === null || state.rang || state.clockGone) return;
    const ring = () => send({ type: 'time', atMs: clock.now() });
    cancelBell = ports.after(Math.max(0, state.bellAtMs - clock.now()) + 1, ring);
  }

  function leave(why: AwayReason): void {
    if (state.phase === 'away' || state.phase === 'ended') return;
    send({ type: 'left', why, atMs: clock.now() });
    noteAway();
  }

  function comeBack(): void {
    if (state.phase !== 'away') return;
    clock.hasJumped();
    send({ type: 'returned', atMs: clock.now() });
    noteAway();
  }

  function noteAway(): void {
    const index = state.away.length - 1;
    const away = state.away[index];
    if (away) listener.awayNoted(index, keptAway(plan, away));
  }

  return {
    plan,
    card,
    entry,
    thread,
    rang,
    isAway,
    press(key, timeStamp, via) {
      if (state.phase === 'ended') return;
      if (clock.hasJumped()) {
        leave('clocks');
        comeBack();
      }
      send({ type: 'key', key, atMs: clock.at(timeStamp), via });
    },
    shown: (showing, timeStamp, by) => send({ type: 'shown', atMs: clock.at(timeStamp), by, showing }),
    leave,
    comeBack,
    stop: () => send({ type: 'stopped', atMs: clock.now() }),
    drop: () => cancelBell?.(),
  };
}

function viewCard({ plan, place, showing, shown }: SittingState, gave: readonly (string | null)[]): CardView {
  const prompt = plan.prompts[place];
  if (prompt === undefined)
    throw new RangeError(`A sitting asks for a card it does not have: place ${place}`);
  return { showing, prompt, whole: shown, wrote: shown ? null : (gave[place] ?? null) };
}

function viewThread(state: SittingState, nowMs: number): ThreadView | null {
  const { clock } = state.plan;
  if (!clock || clock.sight === 'hidden' || state.clockGone) return null;
  const started = state.bellAtMs !== null;
  const elapsedMs = state.bellAtMs === null ? 0 : nowMs - (state.bellAtMs - clock.allowanceMs);
  return { allowanceMs: clock.allowanceMs, elapsedMs, running: started };
}
