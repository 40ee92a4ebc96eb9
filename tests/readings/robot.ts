import { type CopyId, parsePrompt } from '../../src/core/fact/prompt';
import type { Key, OnsetSource, Sat, SittingPlan, Via } from '../../src/core/record/sat';
import { beginSitting, sealSitting, stepSitting } from '../../src/core/sitting/machine';

/** How a robot's hands move: whole ms, the first key at 250 or later. */
export interface Hands {
  readonly firstMs: number;
  readonly gapMs: number;
  readonly doneMs: number;
  readonly turnMs: number;
  readonly via?: Via;
  readonly by?: OnsetSource;
}

const start = {
  offsetMin: 0,
  zone: 'UTC',
  startedAt: 1_800_000_000_000,
  clockStepMs: 0.005,
  isolated: true,
} as const;

export const copyPlan = (numbers: readonly number[], more: Partial<SittingPlan> = {}): SittingPlan => ({
  child: 'child-1',
  purpose: 'practice',
  of: null,
  set: null,
  seed: 1,
  prompts: numbers.map((number): CopyId => `copy-${number}`),
  clock: null,
  takesItself: true,
  onWrong: 'goOn',
  keepTimes: true,
  ...more,
});

/** Sits a plan through the machine, each card by the hands given for it; gives true answers unless told others. */
export function sit(
  plan: SittingPlan,
  handsAt: (place: number) => Hands,
  more: {
    readonly day?: string;
    readonly device?: string;
    readonly given?: ReadonlyMap<number, string>;
  } = {},
): Sat {
  let state = beginSitting(plan);
  let atMs = 500;
  const takesItself = plan.takesItself && (plan.clock !== null || plan.purpose === 'practice');
  while (state.phase !== 'ended') {
    const { place } = state;
    const { firstMs, gapMs, doneMs, turnMs, via = 'touch', by = 'element' } = handsAt(place);
    const press = (key: Key) => {
      state = stepSitting(state, { type: 'key', key, atMs, via }).state;
    };
    state = stepSitting(state, { type: 'shown', by, atMs }).state;
    const prompt = parsePrompt(plan.prompts[place] ?? '');
    const digits = more.given?.get(place) ?? String(prompt?.answer ?? '');
    [...digits].forEach((digit, index) => {
      atMs += index === 0 ? firstMs : gapMs;
      press(digit as Key);
    });
    if (!takesItself) {
      atMs += doneMs;
      press('done');
    }
    atMs += turnMs;
  }
  const sealed = sealSitting(state, { ...start, day: more.day ?? '2026-01-05' });
  return {
    ...sealed,
    id: `sat-${more.day ?? 1}`,
    v: 1,
    seq: 1,
    device: more.device ?? 'tablet',
    at: start.startedAt,
  } as Sat;
}
