import { rowLength } from '../marking/rows';
import type { SittingPlan } from '../record/sat';
import { isNew } from '../summary/accuracy';
import { mendingSteps } from './after-sheet';
import type { DaySource } from './day-source';
import { type DayTime, fittingLength, fullTime, nothing, type Planned } from './minutes';
import { planLookBack } from './plan-look-back';
import { firstCopies, practiceBefore, practiceLength } from './plan-practice';
import { planSheet } from './plan-sheet';
import { nextSpreadPart, planSpread } from './plan-spread';
import { cardStep, firstTryStep, roundAndSheetMs } from './plan-teaching';
import type { SheetDay } from './sheet-day';
import type { Step, Waiting } from './step';

/**
 * The way to today's sheet: the mending that waited, numbers to copy, a first try or cards, the sheet. What comes before
 * the sheet leaves it its time, the mending that of the shortest one. On a look-back nothing is taught before: no help on checks (common practice, no source).
 */
export function stepsToSheet(source: DaySource, before: SheetDay | null, time: DayTime): Planned {
  const sheet = source.change.later?.includes('sheet') ? null : todaysSheet(source, time);
  const { leftMs, cardMs } = time;
  const practice = sheet ? practiceBefore(source, sheet) : [];
  const fullMs = sheet ? sheetTime(sheet, cardMs) + practice.length * fullTime(practiceLength, cardMs) : 0;
  const ahead = { cardMs, leftMs: leftMs - fullMs };
  const leastMs = sheet?.clock ? fullMs : Math.min(fullMs, fullTime(rowLength, cardMs));
  const waited = before ? mendingSteps(source, before, { cardMs, leftMs: leftMs - leastMs }) : nothing;
  const steps: Step[] = [
    ...waited.steps,
    ...(sheet ? copiesWithin(source, { cardMs, leftMs: leftMs - leastMs }) : []),
  ];
  const waits: Waiting[] = [...waited.waits];
  if (!sheet?.spread) steps.push(...teaching(source, sheet, ahead));
  if (sheet && leftMs < cardMs) waits.push({ step: 'sheet', count: 1 });
  else if (sheet) steps.push(...practice, { what: 'sheet', plan: sheet });
  return { steps, waits };
}

/** The hands may be measured on another day; a child who never keyed anything copies numbers first, whatever the time. */
function copiesWithin(source: DaySource, { leftMs, cardMs }: DayTime): readonly Step[] {
  const copies = firstCopies(source);
  const cards = copies.reduce((sum, step) => sum + ('plan' in step ? step.plan.prompts.length : 0), 0);
  return source.summary.practised.done && leftMs < fullTime(cards, cardMs) ? [] : copies;
}

function teaching(source: DaySource, sheet: SittingPlan | null, ahead: DayTime): readonly Step[] {
  const tried = firstTryStep(source, ahead);
  if (sheet?.lookBack) return tried ? [tried] : [];
  const roundMs = roundAndSheetMs - (sheet ? sheetTime(sheet, ahead.cardMs) : 0);
  const cards = cardStep(source, { ...ahead, leftMs: Math.min(ahead.leftMs, roundMs) });
  return [tried, cards].filter((step) => step !== null);
}

/** A sheet of every set for a spread, a look-back, or one of the current set; `null` where there is none. */
function todaysSheet(source: DaySource, time: DayTime): SittingPlan | null {
  const { child, spread, settings } = source;
  const part = nextSpreadPart(source);
  if (spread) return part === null ? ownSheet(source, 0, time) : planSpread(child, spread, part, settings);
  return planLookBack(source, fittingLength(100, time)) ?? ownSheet(source, 0, time);
}

/** Facts of a new set take longer than what was sat lately: where time is short, fewer of them fit (our own decision). */
const newSetFactor = 1.5;

/** The day's sheet of that number, from 0, of the current set; `null` without one. */
export function ownSheet(source: DaySource, nth: number, time: DayTime): SittingPlan | null {
  const { set, today } = source;
  if (!set || set.facts.length === 0) return null;
  const cardMs = time.cardMs * (isNew(source.summary, new Set(set.facts)) ? newSetFactor : 1);
  return planSheet({ ...source, day: today, nth, set, most: fittingLength(100, { ...time, cardMs }) });
}

function sheetTime({ clock, prompts }: SittingPlan, cardMs: number): number {
  return clock ? clock.allowanceMs + cardMs : fullTime(prompts.length, cardMs);
}
