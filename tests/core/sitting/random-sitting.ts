import fc from 'fast-check';
import type { PromptId } from '../../../src/core/fact/prompt';
import type { Key, OnsetSource, SittingPlan } from '../../../src/core/record/sat';
import {
  beginSitting,
  type SittingEvent,
  type SittingState,
  stepSitting,
} from '../../../src/core/sitting/machine';
import { planOf } from './sitter';

const prompts: readonly PromptId[] = [
  'add-6-2',
  'mul-7-8',
  'sub-9-9',
  'div-56-7',
  'mul-12-12',
  'copy-47',
  'add-9-4',
];
const digits: readonly Key[] = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'];

export const anyPlan: fc.Arbitrary<SittingPlan> = fc
  .record({
    prompts: fc.array(fc.constantFrom(...prompts), { minLength: 1, maxLength: 8 }),
    clock: fc.option(
      fc.record({
        allowanceMs: fc.integer({ min: 1000, max: 20_000 }),
        sight: fc.constantFrom('thread' as const, 'hidden' as const),
      }),
    ),
    takesItself: fc.boolean(),
    onWrong: fc.constantFrom('goOn' as const, 'showAgain' as const),
    keepTimes: fc.boolean(),
    shownFirst: fc.option(fc.subarray([0, 1, 2, 3, 4, 5, 6, 7])),
  })
  .map(({ shownFirst, ...changes }) =>
    planOf(changes.prompts, { ...changes, ...(shownFirst && { shownFirst }) }),
  );

/** One event without its time: the gap before it is drawn apart. */
type Move =
  | { readonly type: 'shown'; readonly by: OnsetSource; readonly ago: number | null }
  | { readonly type: 'key'; readonly key: Key }
  | { readonly type: 'right' }
  | { readonly type: 'time' | 'left' | 'returned' | 'stopped' };

const move: fc.Arbitrary<Move> = fc.oneof(
  {
    weight: 160,
    arbitrary: fc.record({ type: fc.constant('shown' as const), by: sources(), ago: fc.constant(null) }),
  },
  {
    weight: 20,
    arbitrary: fc.record({ type: fc.constant('shown' as const), by: sources(), ago: fc.nat(2) }),
  },
  {
    weight: 160,
    arbitrary: fc.record({ type: fc.constant('key' as const), key: fc.constantFrom(...digits) }),
  },
  { weight: 160, arbitrary: fc.constant({ type: 'right' as const }) },
  {
    weight: 120,
    arbitrary: fc.record({
      type: fc.constant('key' as const),
      key: fc.constantFrom('done' as const, 'back' as const, 'skip' as const),
    }),
  },
  { weight: 40, arbitrary: fc.constant({ type: 'time' as const }) },
  { weight: 6, arbitrary: fc.constant({ type: 'left' as const }) },
  { weight: 40, arbitrary: fc.constant({ type: 'returned' as const }) },
  { weight: 1, arbitrary: fc.constant({ type: 'stopped' as const }) },
);

function sources(): fc.Arbitrary<OnsetSource> {
  return fc.constantFrom('frame', 'elementCoarse', 'element');
}

// Microseconds, so that sums meet their bounds exactly; a little back in time now and then, as late stamps are.
const gap = fc.oneof(
  { weight: 200, arbitrary: fc.integer({ min: 0, max: 900_000 }) },
  { weight: 40, arbitrary: fc.constantFrom(0, 250_000, 249_999, 250_001) },
  { weight: 20, arbitrary: fc.integer({ min: -20_000, max: 0 }) },
);

export const anyMoves = fc.array(fc.tuple(gap, move), { maxLength: 120, size: 'max' });

export interface Run {
  readonly states: readonly SittingState[];
  readonly events: readonly SittingEvent[];
  readonly end: SittingState;
}

/** Plays moves out into events, each state kept; a sitting still open at the end is stopped. */
export function play(plan: SittingPlan, moves: readonly (readonly [number, Move])[]): Run {
  const states = [beginSitting(plan)];
  const events: SittingEvent[] = [];
  let micros = 100_000;
  const send = (event: SittingEvent) => {
    const before = states.at(-1) ?? beginSitting(plan);
    events.push(event);
    states.push(stepSitting(before, event).state);
  };
  for (const [wait, made] of moves) {
    micros = Math.max(0, micros + wait);
    send(eventOf(made, micros / 1000, states.at(-1) ?? beginSitting(plan)));
  }
  if (states.at(-1)?.ended === null) send({ type: 'stopped', atMs: micros / 1000 + 1 });
  return { states, events, end: states.at(-1) ?? beginSitting(plan) };
}

function eventOf(made: Move, atMs: number, state: SittingState): SittingEvent {
  switch (made.type) {
    case 'shown':
      return made.ago === null
        ? { type: 'shown', atMs, by: made.by }
        : { type: 'shown', atMs: Math.max(0, atMs - 8), by: made.by, showing: state.showing - made.ago };
    case 'key':
      return { type: 'key', key: made.key, atMs, via: 'touch' };
    case 'right':
      return { type: 'key', key: nextRightKey(state), atMs, via: 'keys' };
    case 'left':
      return { type: 'left', why: 'hidden', atMs };
    default:
      return { type: made.type, atMs };
  }
}

const answers: Record<string, string> = {
  'add-6-2': '8',
  'mul-7-8': '56',
  'sub-9-9': '0',
  'div-56-7': '8',
  'mul-12-12': '144',
  'copy-47': '47',
  'add-9-4': '13',
};

function nextRightKey({ plan, place, entry }: SittingState): Key {
  const answer = answers[plan.prompts[place] ?? ''] ?? '';
  if (entry === answer) return 'done';
  return answer.startsWith(entry) ? (answer[entry.length] as Key) : 'back';
}
