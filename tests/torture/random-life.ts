import { parsePrompt } from '../../src/core/fact/prompt';
import { foldHousehold } from '../../src/core/household/fold-household';
import { effectiveHistory, noHistory } from '../../src/core/household/history';
import { type ChildDay, planDay } from '../../src/core/plan/plan-day';
import type { HouseholdRecord } from '../../src/core/record/household-record';
import { type Draft, type HistoryRecord, isOfHistory, type LogRecord } from '../../src/core/record/record';
import type { Away, Key, SittingPlan, Visit } from '../../src/core/record/sat';
import { recordVersion } from '../../src/core/record/stamp';
import {
  beginSitting,
  keptAway,
  keptVisit,
  resumeSitting,
  type SittingEvent,
  type SittingState,
  sealSitting,
  stepSitting,
} from '../../src/core/sitting/machine';
import { summarize } from '../../src/core/summary/summarize';
import { dayFacts } from '../../src/state/day-facts';

interface Open {
  readonly id: string;
  readonly plan: SittingPlan;
  readonly visits: Visit[];
  readonly away: Away[];
  state: SittingState;
}

/** The only child of these lives. */
export const child = 'ann';
const firstDay = Date.UTC(2026, 2, 2);

/** One device in memory: its log, its journal and the sitting on its screen, by the real rules. */
export class Device {
  records: LogRecord[] = [];
  open: Open | null = null;
  #day = 0;
  #atMs = 0;
  #ids = 0;

  constructor() {
    this.add({ kind: 'childAdded', child, name: 'Ann', edge: 1 });
    this.add({
      kind: 'childSettingsChanged',
      child,
      changes: { length: 5, schoolDays: [1, 2, 3, 4, 5, 6, 7] },
    });
    this.add({ kind: 'setStarted', child, set: 'times-3' });
  }

  add(draft: Draft): string {
    this.#ids += 1;
    const id = `r-${this.#ids}`;
    const seq = 1 + this.records.reduce((highest, record) => Math.max(highest, record.seq), 0);
    this.records.push({ ...draft, id, seq, v: recordVersion, device: 'slate', at: 0 } as LogRecord);
    return id;
  }

  day(): string {
    return new Date(firstDay + this.#day * 86_400_000).toISOString().slice(0, 10);
  }

  nextDay(): void {
    this.#day += 1;
  }

  plan(records: readonly LogRecord[] = this.records): ChildDay {
    const household = foldHousehold(records.filter(isHousehold));
    const { sittings, changes } =
      effectiveHistory(records.filter(isHistory), household).children.get(child) ?? noHistory;
    return planDay({
      child,
      today: this.day(),
      ...dayFacts(household, child),
      change: changes.get(this.day()) ?? {},
      sittings,
      summary: summarize(sittings),
    });
  }

  begin(plan: SittingPlan): void {
    this.#ids += 1;
    this.open = { id: `s-${this.#ids}`, plan, visits: [], away: [], state: beginSitting(plan) };
  }

  /** Does something with the card on the screen; seals the sitting when that was its last. */
  card(does: 'right' | 'wrong' | 'skip'): void {
    const { open } = this;
    if (!open) return;
    this.#send({ type: 'shown', atMs: this.#pass(300), by: 'element', showing: open.state.showing });
    const prompt = open.plan.prompts[open.state.place] ?? '';
    for (const key of keysFor(prompt, does))
      this.#send({ type: 'key', key, atMs: this.#pass(400), via: 'keys' });
  }

  leave(): void {
    this.#send({ type: 'left', why: 'hidden', atMs: this.#pass(50) });
    this.#noteAway();
    this.#send({ type: 'returned', atMs: this.#pass(5000) });
    this.#noteAway();
  }

  stop(): void {
    this.#send({ type: 'stopped', atMs: this.#pass(50) });
  }

  /** The battery dies: memory goes, log and journal stay, and the sitting is taken up from them. */
  crash(): void {
    const { open } = this;
    if (!open) return;
    open.state = resumeSitting(open.plan, open.visits, open.away);
    if (open.state.phase === 'ended') this.#seal();
    else {
      this.#send({ type: 'returned', atMs: this.#pass(5000) });
      this.#noteAway();
    }
  }

  #pass(ms: number): number {
    this.#atMs += ms;
    return this.#atMs;
  }

  #send(event: SittingEvent): void {
    const { open } = this;
    if (!open || open.state.phase === 'ended') return;
    const { state, happened } = stepSitting(open.state, event);
    open.state = state;
    for (const happening of happened) {
      if (happening.what === 'visitClosed' || happening.what === 'visitAmended') {
        const visit = state.visits[happening.index];
        if (visit) open.visits[happening.index] = keptVisit(open.plan, visit);
      }
      if (happening.what === 'ended') this.#seal();
    }
  }

  #noteAway(): void {
    const { open } = this;
    const index = (open?.state.away.length ?? 0) - 1;
    const away = open?.state.away[index];
    if (open && away) open.away[index] = keptAway(open.plan, away);
  }

  #seal(): void {
    const { open } = this;
    if (!open) return;
    this.open = null;
    if (open.state.visits.every(({ end }) => end === 'left')) return;
    const start = {
      day: this.day(),
      offsetMin: 0,
      zone: 'UTC',
      startedAt: 0,
      clockStepMs: 0.005,
      isolated: true,
    };
    this.add(sealSitting(open.state, start));
  }
}

function isHistory(record: LogRecord): record is HistoryRecord {
  return isOfHistory(record);
}

function isHousehold(record: LogRecord): record is HouseholdRecord {
  return !isHistory(record);
}

function keysFor(id: string, does: 'right' | 'wrong' | 'skip'): readonly Key[] {
  if (does === 'skip') return ['skip'];
  const answer = `${parsePrompt(id)?.answer ?? 0}`;
  const given = does === 'right' ? answer : answer.replace(/\d$/, (digit) => (digit === '9' ? '8' : '9'));
  return [...(given.split('') as Key[]), 'done'];
}
