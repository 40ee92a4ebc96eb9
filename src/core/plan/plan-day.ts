import type { FactId } from '../fact/fact';
import type { RuledSat } from '../household/history';
import type { Spread, Trial } from '../household/household';
import { nextRow, rowsFor } from '../marking/rows';
import type { DayChange } from '../record/household-record';
import type { SittingPlan } from '../record/sat';
import type { ChildSettings } from '../record/settings';
import type { Day, Id } from '../record/stamp';
import { isAccurate } from '../summary/accuracy';
import type { Summary } from '../summary/summary';
import { planPractice } from './plan-practice';
import { planAfterSheet, planSheet } from './plan-sheet';
import { isSpreadSat, nextSpreadPart, planSpread } from './plan-spread';
import { type SheetDay, sheetDays } from './sheet-day';
import type { Need, Step } from './step';
import { type DrawnDay, drawnDay, isTrialOn } from './trial-day';

/** What the plan reads of a child. `sittings`: in order, from some day before today on; `summary`: of all of them. */
export interface DaySource {
  readonly child: Id;
  readonly today: Day;
  readonly settings: ChildSettings;
  /** What the parent changed for today only. */
  readonly change: DayChange;
  readonly set: { readonly id: Id; readonly facts: readonly FactId[] } | null;
  readonly kept: readonly FactId[];
  readonly sittings: readonly RuledSat[];
  readonly summary: Summary;
  /** The clock trial drawn last, stopped or not. */
  readonly trial: Trial | null;
  /** A spread asked for and not over. */
  readonly spread: Spread | null;
}

/** A child's day: what is left to do, what was sat, what waits for the parent. */
export interface ChildDay {
  readonly child: Id;
  readonly today: Day;
  readonly steps: readonly Step[];
  /** Today's sheets in the order they were sat, with their rows and mending. */
  readonly sheets: readonly SheetDay[];
  readonly needs: readonly Need[];
  /** Nothing is left but to look at the piece. */
  readonly isDone: boolean;
  readonly isSkipped: boolean;
  /** What a clock trial that goes on has for the next sheet, whatever is changed for today. */
  readonly drawn: DrawnDay | null;
}

/** The plan: a pure function of child, log and day. */
export function planDay(source: DaySource): ChildDay {
  const sheets = sheetDays(source.sittings, source.settings.limits);
  const today = sheets.filter(({ ruled }) => ruled.sat.day === source.today);
  const isSkipped = source.change.skip === true && today.length === 0;
  const steps = isSkipped ? [] : stepsOf(source, sheets, today);
  return {
    child: source.child,
    today: source.today,
    steps,
    sheets: today,
    needs: needsOf(source, today),
    isDone: today.length > 0 && steps.every(({ what }) => what === 'piece'),
    isSkipped,
    drawn: drawnDay(source),
  };
}

function stepsOf(
  source: DaySource,
  sheets: readonly SheetDay[],
  today: readonly SheetDay[],
): readonly Step[] {
  const steps: Step[] = [];
  const before = sheets.filter(({ ruled }) => ruled.sat.day < source.today).at(-1);
  if (before && today.length === 0) steps.push(...mendingOf(source, before));
  if (today.length === 0) steps.push(...sheetSteps(source));
  for (const sheet of today) steps.push(...rowSteps(source, sheet), ...mendingOf(source, sheet));
  if (today.length > 0 || steps.some(({ what }) => what === 'sheet')) steps.push({ what: 'piece' });
  return steps.length > 0 && isFirstTime(source) ? [{ what: 'told' }, ...steps] : steps;
}

function isFirstTime({ sittings, summary }: DaySource): boolean {
  return sittings.length === 0 && summary.lastSheet === null;
}

function sheetSteps(source: DaySource): readonly Step[] {
  const { child, today, summary } = source;
  const plan = sheetPlan(source);
  if (!plan) return [];
  const isPractised = plan.takesItself
    ? summary.practised.itself
    : summary.practised.done || summary.practised.itself;
  if (isPractised) return [{ what: 'sheet', plan }];
  return [
    { what: 'practice', plan: planPractice(child, today, plan) },
    { what: 'sheet', plan },
  ];
}

/** A spread comes before the set: what it says may be another set. */
function sheetPlan(source: DaySource): SittingPlan | null {
  const { child, today, set, spread, settings } = source;
  const part = nextSpreadPart(source);
  if (spread && part !== null) return planSpread(child, spread, part, settings);
  return set && set.facts.length > 0 ? planSheet({ ...source, day: today, nth: 0, set }) : null;
}

function rowSteps({ settings }: DaySource, sheet: SheetDay): readonly Step[] {
  const next = nextRow(sheet.marked, sheet.rows, rowsSent(settings, sheet));
  if ('stop' in next) return [];
  return [{ what: 'row', plan: planAfterSheet(sheet.ruled.sat, 'row', next.facts, settings.keepTimes) }];
}

function mendingOf({ settings, today }: DaySource, sheet: SheetDay): readonly Step[] {
  if (sheet.toMend.length === 0 || hasMendedEnough(sheet, today)) return [];
  const facts = sheet.toMend.map(({ fact }) => fact);
  return [
    {
      what: 'mending',
      plan: planAfterSheet(sheet.ruled.sat, 'mending', facts, settings.keepTimes),
      gave: sheet.toMend.map(({ gave }) => gave),
    },
  ];
}

/** What a child passed over twice while mending waits for another day: today ends on something finished. */
function hasMendedEnough({ parts }: SheetDay, today: Day): boolean {
  const last = parts.at(-1)?.sat;
  return last?.purpose === 'mending' && last.day === today && last.ended === 'finished';
}

/** Rows a parent ruled on, else those of the band where rows are sent by themselves. */
function rowsSent(settings: ChildSettings, { ruled, marked }: SheetDay): number {
  if (ruled.rulings.rows !== null) return ruled.rulings.rows;
  return settings.rowsSent === 'itself' ? rowsFor(marked.band, settings.rows) : 0;
}

function needsOf(source: DaySource, today: readonly SheetDay[]): readonly Need[] {
  const { set, settings, summary } = source;
  const needs: Need[] = [];
  if (isSpreadSat(source)) needs.push({ what: 'spreadSat' });
  else if (!source.spread && (!set || set.facts.length === 0)) needs.push({ what: 'noSet' });
  for (const sheet of today) needs.push(...needsOfSheet(settings, sheet));
  if (set && !settings.timed && !isTrialOn(source) && isAccurate(summary, new Set(set.facts)))
    needs.push({ what: 'proposeClock' });
  return needs;
}

function needsOfSheet(settings: ChildSettings, sheet: SheetDay): readonly Need[] {
  const { ruled, marked, rows } = sheet;
  const sitting = ruled.sat.id;
  const proposed = rowsFor(marked.band, settings.rows);
  const needs: Need[] = [];
  if (marked.noBand === 'interrupted') needs.push({ what: 'interrupted', sitting });
  if (settings.rowsSent === 'parent' && ruled.rulings.rows === null && proposed > 0)
    needs.push({ what: 'rowsWaiting', sitting, rows: proposed });
  const next = nextRow(marked, rows, rowsSent(settings, sheet));
  if ('stop' in next && next.stop === 'tellParent') needs.push({ what: 'rowsStopped', sitting });
  return needs;
}
