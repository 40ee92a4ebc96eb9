import { effectiveHistory, noHistory } from '../../src/core/household/history';
import { activeTimes } from '../../src/core/marking/active-time';
import type { ChildDay } from '../../src/core/plan/plan-day';
import { weekday } from '../../src/core/plan/school-day';
import { seedFor } from '../../src/core/plan/seed';
import type { Need, Step } from '../../src/core/plan/step';
import type { Draft, LogRecord } from '../../src/core/record/record';
import type { Sat } from '../../src/core/record/sat';
import type { ChildSettings } from '../../src/core/record/settings';
import type { Day } from '../../src/core/record/stamp';
import { setById } from '../../src/core/set/teaching-sets';
import type { Summary } from '../../src/core/summary/summary';
import { type BoatLog, createBoatLog } from '../../src/demo/boat-log';
import { makeChance } from '../../src/demo/chance';
import { type ChildDays, createChildDays } from '../../src/demo/child-days';
import type { CrewMember } from '../../src/demo/crew';
import { juniper } from '../../src/demo/juniper';
import { settingUp } from '../../src/demo/parent-acts';
import type { Mishap } from '../../src/demo/sit';
import { teo } from '../../src/demo/teo';
import { utc, wallMs } from '../../src/demo/wall-clock';
import { wren } from '../../src/demo/wren';
import { readChildLog } from '../../src/readings/child-log/child-log';
import { readFacts } from '../../src/readings/facts/read-facts';
import { readReadiness } from '../../src/readings/move-on/read-readiness';
import { dayFacts } from '../../src/state/day-facts';
import { isHistory } from '../demo/a-boat';

/** One step taken, with what the day looked like when it was offered. */
export interface Taken {
  readonly step: Extract<Step, { plan: unknown }>;
  readonly sat: Sat;
  readonly day: ChildDay;
}

/** One child's day of the term. */
export interface TermDay {
  readonly day: Day;
  readonly nth: number;
  readonly before: Summary;
  readonly opened: ChildDay;
  readonly taken: readonly Taken[];
  readonly ended: ChildDay;
  readonly set: string;
  /** Facts kept when the day began. */
  readonly keptBefore: number;
  readonly settings: ChildSettings;
  /** The parent moved on to another set in the evening. */
  readonly moved: boolean;
}

export interface Term {
  readonly records: readonly LogRecord[];
  readonly days: ReadonlyMap<CrewMember, readonly TermDay[]>;
}

export const crew = [wren, teo, juniper] as const;
const firstDay = '2026-01-05';
const weeks = 12;
/** The sixth week is a holiday. Days of the term count from 0, weekends among them, the holiday apart. */
const holidayWeek = 5;
/** The day on which every sheet is broken off, a child's ill days, the morning in which a set is changed, and the evening it is changed back. */
export const brokenOffOn = 11;
const illOn: Readonly<Record<string, readonly number[]>> = {
  Wren: [17, 18, 21],
  Teo: [42],
  Juniper: [9, 35],
};
export const changed = { member: teo, on: 8, to: 'times-6', back: 10 } as const;

/** Every day of the twelve weeks, weekends and the holiday too; days count from 0. */
const allDays: readonly Day[] = Array.from({ length: weeks * 7 }, (_, nth) =>
  new Date(Date.parse(firstDay) + nth * 86_400_000).toISOString().slice(0, 10),
);

/** A term through the real plan: the same from the same seed. */
export function sitTerm(seed: number, changes: Readonly<Record<string, Partial<ChildSettings>>> = {}): Term {
  const log = createBoatLog('slate', makeChance(seed));
  const setUpAt = wallMs(firstDay, 7, 0, utc);
  const schoolDays = [1, 2, 3, 4, 5];
  for (const member of crew)
    for (const draft of [
      ...settingUp(member),
      {
        kind: 'childSettingsChanged',
        child: member.id,
        changes: { schoolDays, gapLines: true, ...changes[member.name] },
      } as const,
    ])
      log.add(draft, setUpAt);
  const aboard = crew.map((member) => ({
    member,
    days: createChildDays(member, log, makeChance(seedFor(`${seed}`, member.name, 'term', 0)), utc),
    sat: [] as TermDay[],
  }));
  for (const [index, day] of allDays.entries()) {
    if (Math.floor(index / 7) === holidayWeek) continue;
    for (const { member, days, sat } of aboard) {
      if (weekday(day) <= 5 && illOn[member.name]?.includes(sat.length)) {
        // Ill: the day goes by.
        sat.push(absent(log, member, days, day, sat.length));
        continue;
      }
      sat.push(sitDay(log, member, days, day, sat.length));
    }
  }
  return { records: log.records, days: new Map(aboard.map(({ member, sat }) => [member, sat])) };
}

function absent(log: BoatLog, member: CrewMember, days: ChildDays, day: Day, nth: number): TermDay {
  days.begin(day, wallMs(day, 9, 0, utc));
  return dayOf(log, member, days, { day, nth, taken: [], opened: days.plan(), moved: false });
}

function sitDay(log: BoatLog, member: CrewMember, days: ChildDays, day: Day, nth: number): TermDay {
  days.begin(day, wallMs(day, member.sitsAt[0], member.sitsAt[1], utc));
  const before = days.summary();
  const keptBefore = dayFacts(log.household(), member.id).kept.length;
  // On every other day the parent takes the clock away, for today only.
  if (nth % 2 === 1 && dayFacts(log.household(), member.id).settings.timed) {
    log.add({ kind: 'dayChanged', child: member.id, day, change: { timed: false } }, wallMs(day, 8, 0, utc));
    days.change({ timed: false });
  }
  const opened = days.plan();
  const taken: Taken[] = [];
  const isChange = changed.member === member && nth === changed.on;
  for (let now = opened; taken.length < 30; now = days.plan()) {
    const step = now.steps.find(
      (one): one is Taken['step'] =>
        'plan' in one && (member.choosesCards || isChange || one.what !== 'cards' || !one.isChoice),
    );
    if (!step) break;
    const mishap: Mishap | null =
      nth === brokenOffOn && step.what === 'sheet' ? { what: 'stopped', afterCards: 4 } : null;
    taken.push({ step, day: now, sat: days.sitStep(step, { mishap }) });
    if (isChange && taken.length === 1)
      log.add({ kind: 'setStarted', child: member.id, set: changed.to }, days.nowMs());
  }
  const { drafts, moved } = evening(log, member, days, day, nth);
  const settings = dayFacts(log.household(), member.id).settings;
  const set = dayFacts(log.household(), member.id).set?.id ?? '';
  const ended = days.plan();
  drafts.forEach((draft, index) => {
    log.add(draft, wallMs(day, 19, index, utc));
  });
  return { day, nth, before, opened, taken, ended, set, keptBefore, settings, moved };
}

function dayOf(
  log: BoatLog,
  member: CrewMember,
  days: ChildDays,
  about: Pick<TermDay, 'day' | 'nth' | 'taken' | 'opened' | 'moved'>,
): TermDay {
  const { settings, kept, set } = dayFacts(log.household(), member.id);
  return {
    ...about,
    before: days.summary(),
    ended: days.plan(),
    set: set?.id ?? '',
    keptBefore: kept.length,
    settings,
  };
}

function setBeforeChange(log: BoatLog, child: string): string {
  const started = log.records.flatMap((one) =>
    one.kind === 'setStarted' && one.child === child ? [one.set] : [],
  );
  return started.findLast((set) => set !== changed.to) ?? '';
}

/** The parent follows what the tool proposes: the next set when one is ready, the clock, the spoken check. */
function evening(
  log: BoatLog,
  member: CrewMember,
  days: ChildDays,
  day: Day,
  nth: number,
): { readonly drafts: readonly Draft[]; readonly moved: boolean } {
  const { id: child } = member;
  const { set, settings } = dayFacts(log.household(), child);
  const needs = days.plan().needs;
  const drafts: Draft[] = needs.flatMap((need) => held(need, child, day));
  if (changed.member === member && nth === changed.back)
    drafts.push({ kind: 'setStarted', child, set: setBeforeChange(log, child) });
  const next = member.sets[member.sets.indexOf(set?.id ?? '') + 1];
  if (set && next !== undefined && weekday(day) === 5 && isReady(log, member))
    return {
      moved: true,
      drafts: [
        ...drafts,
        { kind: 'setKept', child, set: set.id, kept: true },
        { kind: 'setStarted', child, set: next },
        ...(settings.timed
          ? [{ kind: 'childSettingsChanged', child, changes: { timed: false } } as const]
          : []),
      ],
    };
  if (member.clock !== 'never' && needs.some(({ what }) => what === 'proposeClock'))
    drafts.push({ kind: 'childSettingsChanged', child, changes: { timed: true } });
  return { drafts, moved: false };
}

function held(need: Need, child: string, day: Day): readonly Draft[] {
  if (need.what !== 'spokenCheck') return [];
  const answers = need.facts.map(({ fact }) => ({ fact, came: 'right' as const }));
  return [{ kind: 'spokenChecked', child, day, answers }];
}

function isReady(log: BoatLog, member: CrewMember): boolean {
  const household = log.household();
  const child = household.children.find(({ id }) => id === member.id);
  const history = effectiveHistory(log.records.filter(isHistory), household).children.get(member.id);
  if (!child) return false;
  const factsOf = (id: string) =>
    setById(id)?.facts ?? household.ownSets.find((set) => set.id === id)?.facts ?? null;
  const read = readChildLog(child, history ?? noHistory, factsOf);
  return readReadiness(read, readFacts(read))?.isReady ?? false;
}

/** Ms at the cards that a day took, and of its longest card. */
export function timeOf({ taken }: TermDay): { readonly ms: number; readonly longestCardMs: number } {
  let ms = 0;
  let longestCardMs = 0;
  for (const { sat } of taken) {
    const active = activeTimes(sat).map((at) => at ?? 0);
    ms += active.at(-1) ?? 0;
    // A card is through when its fact is: shown again, it is still the same one.
    let from = 0;
    for (const [index, { place }] of sat.visits.entries())
      if (sat.visits[index + 1]?.place !== place) {
        longestCardMs = Math.max(longestCardMs, (active[index] ?? 0) - from);
        from = active[index] ?? 0;
      }
  }
  return { ms, longestCardMs };
}
