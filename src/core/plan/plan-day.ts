import { readFirstTry } from '../first-try/first-try';
import { markSat } from '../marking/mark-sat';
import { daysBetween } from '../memory/memory-strength';
import { lineSteps, mendingSteps, rowSteps } from './after-sheet';
import { ownSheet, stepsToSheet } from './before-sheet';
import type { ChildDay, DaySource } from './day-source';
import { type DayTime, fullTime, nothing, type Planned, timeOf } from './minutes';
import { needsOf } from './plan-needs';
import { secondCopies } from './plan-practice';
import { nextSpreadPart, planSpread } from './plan-spread';
import { weekday } from './school-day';
import { type SheetDay, sheetDays } from './sheet-day';
import type { Step } from './step';
import { drawnDay } from './trial-day';

export type { ChildDay, DaySource } from './day-source';

/** What waited longer than a week is let go: nothing heaps up over a holiday (our own decision). */
const waitsForDays = 7;

/** The plan: a pure function of child, log and day. */
export function planDay(source: DaySource): ChildDay {
  const { child, today } = source;
  const all = sheetDays(source.sittings, source.settings.limits);
  const sheets = all.filter(({ ruled }) => ruled.sat.day === today);
  const before = all.filter(({ ruled }) => isWaitingFrom(ruled.sat.day, today)).at(-1) ?? null;
  const time = timeOf(source);
  const isSkipped = source.change.skip === true && sheets.length === 0;
  const isFree = !isSkipped && isFreeDay(source);
  const { steps, waits } = isSkipped || isFree ? nothing : stepsOf(source, sheets, before, time);
  const isOver = steps.every(({ what }) => what === 'piece');
  return {
    child,
    today,
    steps,
    sheets,
    needs: needsOf(source, sheets, waits),
    isDone: isOver && (sheets.length > 0 || isAnythingSat(source)),
    isSkipped,
    isFree,
    again: isOver && !isSkipped ? moreOf(source, sheets.length, time) : null,
    firstTry: firstTryOf(source),
    drawn: isLookBackDay(steps, sheets) ? null : drawnDay(source),
  };
}

function stepsOf(
  source: DaySource,
  sheets: readonly SheetDay[],
  before: SheetDay | null,
  time: DayTime,
): Planned {
  const parts = sheets.length === 0 ? [stepsToSheet(source, before, time)] : sheets.map(afterSheet);
  const steps = parts.flatMap((part) => part.steps);
  if (sheets.length > 0) steps.push(...copiesAfter());
  if (sheets.length > 0 || steps.some(({ what }) => what === 'sheet')) steps.push({ what: 'piece' });
  const isFirstTime = steps.length > 0 && isAtFirst(source);
  return {
    steps: isFirstTime ? [{ what: 'told' }, ...steps] : steps,
    waits: parts.flatMap((part) => part.waits),
  };

  function afterSheet(sheet: SheetDay, nth: number): Planned {
    const rows = rowSteps(source, sheet, time);
    const mending = mendingSteps(source, sheet, time);
    const lines = nth === 0 ? lineSteps(source, sheet, time) : nothing;
    const open = [rows, mending, lines];
    return { steps: open.flatMap((part) => part.steps), waits: open.flatMap((part) => part.waits) };
  }

  function copiesAfter(): readonly Step[] {
    const copies = secondCopies(source);
    const cards = copies.reduce((sum, step) => sum + ('plan' in step ? step.plan.prompts.length : 0), 0);
    return time.leftMs < fullTime(cards, time.cardMs) ? [] : copies;
  }
}

function isWaitingFrom(day: string, today: string): boolean {
  return day < today && daysBetween(day, today) <= waitsForDays;
}

/** Until a child's first sheet every day is a school day whatever the week says: families begin on weekends. */
function isFreeDay(source: DaySource): boolean {
  const { settings, change, today, summary } = source;
  const isSchoolDay = change.school || settings.schoolDays.includes(weekday(today));
  return !isSchoolDay && summary.lastSheet !== null && !isAnythingSat(source);
}

function isAtFirst({ sittings, summary }: DaySource): boolean {
  return sittings.length === 0 && summary.lastSheet === null;
}

function isAnythingSat({ sittings, today }: DaySource): boolean {
  return sittings.some(({ sat, rulings }) => sat.day === today && !rulings.voided);
}

/** One more sheet as long as there is time for a row of it; on a free day what is left of a spread goes first. */
function moreOf(source: DaySource, nth: number, time: DayTime): ChildDay['again'] {
  if (time.leftMs < fullTime(5, time.cardMs)) return null;
  const part = nth === 0 ? nextSpreadPart(source) : null;
  return source.spread && part !== null
    ? planSpread(source.child, source.spread, part, source.settings)
    : ownSheet(source, nth, time);
}

function isLookBackDay(steps: readonly Step[], sheets: readonly SheetDay[]): boolean {
  const plans = [
    ...steps.flatMap((step) => (step.what === 'sheet' ? step.plan : [])),
    ...sheets.map(({ ruled }) => ruled.sat),
  ];
  return plans.some(({ lookBack }) => lookBack);
}

/** Times are not read here: how fast the hands are is for the readings to say. */
function firstTryOf({ sittings, today, settings, change }: DaySource): ChildDay['firstTry'] {
  const todays = sittings.filter(({ sat, rulings }) => sat.day === today && !rulings.voided);
  const tried = todays.filter(({ sat }) => sat.purpose === 'firstTry');
  if (tried.length === 0) return null;
  const places = tried.flatMap(({ sat, rulings }) => markSat(sat, rulings, settings.limits).places);
  const { yours, toTeach } = readFirstTry(places, 0);
  const isLast = todays.at(-1)?.sat.purpose === 'firstTry';
  return { yours, toTeach, isToHear: isLast && yours.length > 0 && !change.heard };
}
