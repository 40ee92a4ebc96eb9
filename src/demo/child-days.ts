import type { RuledSat } from '../core/household/history';
import { type ChildDay, planDay } from '../core/plan/plan-day';
import type { Step } from '../core/plan/step';
import type { DayChange } from '../core/record/household-record';
import type { Sat } from '../core/record/sat';
import type { Day } from '../core/record/stamp';
import { sealSitting } from '../core/sitting/machine';
import { resumeSummary } from '../core/summary/summarize';
import { emptySummary, type Summary } from '../core/summary/summary';
import { dayFacts } from '../state/day-facts';
import { betweenMs } from './assumptions';
import type { BoatLog } from './boat-log';
import type { Chance } from './chance';
import type { CrewMember } from './crew';
import { type Mind, makeMind } from './made-child';
import { type Mishap, sit } from './sit';
import type { ZoneAt } from './wall-clock';

/** One child's way through the days, step by step as the plan gives them. */
export interface ChildDays {
  /** Begins a day: what was ruled on the days before is final. */
  begin(day: Day, startMs: number): void;
  /** What the parent changes for this day. */
  change(change: DayChange): void;
  plan(): ChildDay;
  summary(): Summary;
  /** Sits a step that has a plan, and records it. */
  sitStep(step: SatStep, options?: SitOptions): Sat;
  /** The wall clock when the child was last through with something. */
  nowMs(): number;
}

export type SatStep = Extract<Step, { plan: unknown }>;

interface SitOptions {
  readonly mishap?: Mishap | null;
  /** Of many throws of the sitting the first that this takes; else the last. */
  readonly takes?: (sat: Sat) => boolean;
  readonly throws?: number;
}

export function createChildDays(member: CrewMember, log: BoatLog, chance: Chance, zoneAt: ZoneAt): ChildDays {
  let mind: Mind = makeMind(member.traits);
  let day: Day = '';
  let nowMs = 0;
  let change: DayChange = {};
  let before: Summary = emptySummary;
  /** The last day with sittings, and today's. */
  let last: readonly Sat[] = [];
  let todays: readonly Sat[] = [];

  const ruled = (sats: readonly Sat[]): readonly RuledSat[] =>
    sats.map((sat) => ({ sat, child: member.id, rulings: log.household().rulingsOn(sat.id) }));
  const summary = () => resumeSummary(before, ruled(todays));

  return {
    summary,
    nowMs: () => nowMs,
    begin(nextDay, startMs) {
      before = summary();
      if (todays.length > 0) last = todays;
      todays = [];
      day = nextDay;
      nowMs = startMs;
      change = {};
    },
    change(more) {
      change = { ...change, ...more };
    },
    plan: () =>
      planDay({
        child: member.id,
        today: day,
        device: log.device,
        ...dayFacts(log.household(), member.id),
        change,
        sittings: ruled([...last, ...todays]),
        summary: summary(),
      }),
    sitStep({ plan }, { mishap = null, takes = () => true, throws = 1 } = {}) {
      const startedAt = Math.round(nowMs + chance.between(betweenMs.least, betweenMs.most));
      const start = { day, ...zoneAt(startedAt), startedAt, clockStepMs: 0.005, isolated: true };
      const throwOnce = () => {
        const tried = mind.copy();
        const draft = sealSitting(sit(plan, tried, chance, mishap), start);
        return { tried, sat: log.stamp(draft, startedAt + (draft.endedMs ?? 0)) as Sat };
      };
      let thrown = throwOnce();
      for (let more = 1; more < throws && !takes(thrown.sat); more += 1) thrown = throwOnce();
      const { sat, tried } = thrown;
      mind = tried;
      nowMs = sat.at;
      log.put(sat);
      todays = [...todays, sat];
      return sat;
    },
  };
}
