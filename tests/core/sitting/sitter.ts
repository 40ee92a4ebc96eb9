import type { PromptId } from '../../../src/core/fact/prompt';
import type { Clock, Key, OnsetSource, Sat, SittingPlan, SittingStart } from '../../../src/core/record/sat';
import {
  beginSitting,
  type Happening,
  type SittingEvent,
  type SittingState,
  sealSitting,
  stepSitting,
} from '../../../src/core/sitting/machine';

export const clock45: Clock = { allowanceMs: 45_000, sight: 'thread' };

export const start: SittingStart = {
  day: '2026-11-25',
  offsetMin: 0,
  zone: 'Etc/UTC',
  startedAt: Date.UTC(2026, 10, 25, 9),
  clockStepMs: 0.005,
  isolated: true,
};

export function planOf(prompts: readonly PromptId[], changes: Partial<SittingPlan> = {}): SittingPlan {
  return {
    child: 'wren',
    purpose: 'sheet',
    of: null,
    set: 'times-6',
    seed: 1,
    prompts,
    clock: null,
    takesItself: false,
    onWrong: 'goOn',
    keepTimes: true,
    ...changes,
  };
}

export function timed(prompts: readonly PromptId[], changes: Partial<SittingPlan> = {}): SittingPlan {
  return planOf(prompts, { clock: clock45, takesItself: true, ...changes });
}

/** A sitting driven by hand: every call is one event. */
export class Sitter {
  state: SittingState;
  readonly happened: Happening[] = [];
  readonly events: SittingEvent[] = [];

  constructor(plan: SittingPlan, state: SittingState = beginSitting(plan)) {
    this.state = state;
  }

  send(event: SittingEvent): this {
    const { state, happened } = stepSitting(this.state, event);
    this.state = state;
    this.events.push(event);
    this.happened.push(...happened);
    return this;
  }

  shown(atMs: number, by: OnsetSource = 'element', showing?: number): this {
    return this.send({ type: 'shown', atMs, by, ...(showing !== undefined && { showing }) });
  }

  key(key: Key, atMs: number): this {
    return this.send({ type: 'key', key, atMs, via: 'keys' });
  }

  /** The card shown at `onsetMs`, `digits` from `atMs` on 100 ms apart, and the done key where `done` is told. */
  answer(digits: string, onsetMs: number, atMs: number, done?: 'done'): this {
    this.shown(onsetMs);
    return this.type(digits, atMs, done);
  }

  type(digits: string, atMs: number, done?: 'done'): this {
    for (const [index, digit] of [...digits].entries()) this.key(digit as Key, atMs + index * 100);
    return done ? this.key('done', atMs + digits.length * 100) : this;
  }

  /** All digits at one moment. */
  typeAll(digits: string, atMs: number): this {
    for (const digit of digits) this.key(digit as Key, atMs);
    return this;
  }

  time(atMs: number): this {
    return this.send({ type: 'time', atMs });
  }

  left(atMs: number, why: 'hidden' | 'clocks' = 'hidden'): this {
    return this.send({ type: 'left', why, atMs });
  }

  returned(atMs: number): this {
    return this.send({ type: 'returned', atMs });
  }

  stopped(atMs: number): this {
    return this.send({ type: 'stopped', atMs });
  }

  get visits() {
    return this.state.visits;
  }

  get given() {
    return this.visits.map(({ given }) => given);
  }

  whats() {
    return this.happened.map(({ what }) => what);
  }

  sat(): Sat {
    return stamped(this.state);
  }
}

export function stamped(state: SittingState): Sat {
  return { ...sealSitting(state, start), id: 'sat-1', v: 1, seq: 1, device: 'tablet', at: start.startedAt };
}
