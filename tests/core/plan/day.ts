import { type ChildDay, type DaySource, planDay } from '../../../src/core/plan/plan-day';
import type { Step } from '../../../src/core/plan/step';
import type { SittingPlan } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { setById } from '../../../src/core/set/teaching-sets';
import { summarize } from '../../../src/core/summary/summarize';
import { type Act, ruled, sit } from './sit';

export const monday = '2026-03-02';
export const today = '2026-03-03';
export const tomorrow = '2026-03-04';

export const set = { id: 'times-3', facts: setById('times-3')?.facts ?? [] };
export const kept = setById('times-2')?.facts ?? [];

/** A child with nothing sat, a set, nothing kept, and no card rounds unless they are asked for. */
export function source(over: Partial<DaySource> = {}): DaySource {
  const sittings = over.sittings ?? [];
  return {
    child: 'ann',
    today,
    settings: settings(),
    change: {},
    set,
    kept: [],
    ticked: new Set(),
    sittings,
    summary: summarize(sittings),
    trial: null,
    spread: null,
    spoken: [],
    ...over,
  };
}

export function settings(over: Partial<DaySource['settings']> = {}): DaySource['settings'] {
  return { ...defaultChildSettings, ...over };
}

export function whats(day: ChildDay): readonly Step['what'][] {
  return day.steps.map(({ what }) => what);
}

export function stepOf<W extends Step['what']>(day: ChildDay, what: W): Extract<Step, { what: W }> {
  const step = day.steps.find((other) => other.what === what);
  if (!step) throw new Error(`no ${what} among ${whats(day)}`);
  return step as Extract<Step, { what: W }>;
}

export interface SatThrough {
  /** What was sat, in order; a look-back as such. */
  readonly sat: readonly string[];
  readonly day: ChildDay;
  readonly source: DaySource;
}

/** Sits today's steps as they come, `act` saying how each card goes, until nothing is left but the piece. */
export function sitThrough(
  from: DaySource,
  act: (plan: SittingPlan, showing: number, place: number) => Act = () => 'right',
  tookMs = 1500,
): SatThrough {
  let now = from;
  const sat: string[] = [];
  for (let steps = 0; steps < 40; steps += 1) {
    const step = planDay(now).steps.find((other) => 'plan' in other);
    if (!step || !('plan' in step)) break;
    sat.push(step.what);
    now = sitStep(now, step.plan, (showing, place) => act(step.plan, showing, place), tookMs);
  }
  return { sat, day: planDay(now), source: now };
}

/** The source with one plan sat. */
export function sitStep(
  from: DaySource,
  plan: SittingPlan,
  act: (showing: number, place: number) => Act = () => 'right',
  tookMs = 1500,
): DaySource {
  const sittings = [...from.sittings, ruled(sit(plan, from.today, { act, tookMs }))];
  return { ...from, sittings, summary: summarize(sittings) };
}

/** Day after day sat through, all right; the source on the last of them, nothing sat of it yet. */
export function daysOf(from: DaySource, days: readonly string[]): DaySource {
  let now = from;
  for (const day of days.slice(0, -1)) now = sitThrough({ ...now, today: day }).source;
  return { ...now, today: days.at(-1) ?? now.today };
}

export const onlyWrong =
  (purpose: SittingPlan['purpose'], places: readonly number[]) =>
  (plan: SittingPlan, _showing: number, place: number): Act =>
    plan.purpose === purpose && places.includes(place) && !plan.twinOf ? 'wrong' : 'right';
