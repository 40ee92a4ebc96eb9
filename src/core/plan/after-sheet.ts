import { parseFact } from '../fact/fact';
import { planLines } from '../gap-line/plan-lines';
import { nextRow, rowLength, rowsFor } from '../marking/rows';
import type { LaterStep } from '../record/household-record';
import type { SittingPlan } from '../record/sat';
import type { ChildSettings } from '../record/settings';
import type { Day } from '../record/stamp';
import type { DaySource } from './day-source';
import { type DayTime, fullTime, nothing, type Planned } from './minutes';
import { planAfterSheet } from './plan-sheet';
import { planTwins, untwinned } from './plan-twins';
import { seedFor } from './seed';
import type { SheetDay } from './sheet-day';
import type { Waiting } from './step';

/** The next extra row, as long as one is sent and there is time for a whole one. */
export function rowSteps(source: DaySource, sheet: SheetDay, { leftMs, cardMs }: DayTime): Planned {
  const next = nextRow(sheet.marked, sheet.rows, rowsSent(source.settings, sheet));
  if ('stop' in next || isLater(source, 'rows')) return nothing;
  if (leftMs < fullTime(rowLength, cardMs)) return waits('row', 1);
  const { keepTimes } = source.settings;
  return {
    steps: [{ what: 'row', plan: planAfterSheet(sheet.ruled.sat, 'row', next.facts, { keepTimes }) }],
    waits: [],
  };
}

/** Rows a parent ruled on, else those of the band where rows are sent by themselves. */
export function rowsSent(settings: ChildSettings, { ruled, marked }: SheetDay): number {
  if (ruled.rulings.rows !== null) return ruled.rulings.rows;
  return settings.rowsSent === 'itself' ? rowsFor(marked.band, settings.rows) : 0;
}

/**
 * What a sheet leaves to put right, then the twins of what was miscalculated: a slip is only corrected, a
 * miscalculation is corrected and followed by another of its kind (common practice, no source). Both end with the
 * day's minutes, and what is left of them begins the next day.
 */
export function mendingSteps(source: DaySource, sheet: SheetDay, time: DayTime): Planned {
  if (isLater(source, 'mending') || sheet.ruled.rulings.notOwnWork) return nothing;
  const open = [mend(source, sheet, time), twins(source, sheet, time)];
  return { steps: open.flatMap(({ steps }) => steps), waits: open.flatMap((one) => one.waits) };
}

function mend(source: DaySource, sheet: SheetDay, { leftMs, cardMs }: DayTime): Planned {
  const { toMend } = sheet;
  if (toMend.length === 0) return nothing;
  if (leftMs < cardMs) return waits('mending', toMend.length);
  if (isPassedOver(sheet, source.today, false)) return nothing;
  const facts = toMend.map(({ fact }) => fact);
  const plan = planAfterSheet(sheet.ruled.sat, 'mending', facts, untilEnough(source, leftMs));
  return { steps: [{ what: 'mending', plan, gave: toMend.map(({ gave }) => gave) }], waits: [] };
}

function twins(source: DaySource, sheet: SheetDay, { leftMs, cardMs }: DayTime): Planned {
  const open = untwinned(sheet).length;
  if (open === 0) return nothing;
  if (leftMs < cardMs) return waits('twin', open);
  if (isPassedOver(sheet, source.today, true)) return nothing;
  const plan = planTwins(sheet, source.summary.facts, untilEnough(source, leftMs));
  return plan ? { steps: [{ what: 'twin', plan }], waits: [] } : nothing;
}

/**
 * Gap lines and stories once a day, where the parent wants them: one line, and one story of a fact of today. What is
 * answered wrong is shown and asked again at once, since no mending follows.
 */
export function lineSteps(source: DaySource, sheet: SheetDay, { leftMs, cardMs }: DayTime): Planned {
  const { child, today, settings, set, sittings } = source;
  const isSat = sittings.some(({ sat, rulings }) => isLines(sat, today) && !rulings.voided);
  if (!settings.gapLines || isSat || isLater(source, 'lines')) return nothing;
  if (leftMs < cardMs) return waits('lines', 1);
  const facts = sheet.ruled.sat.prompts.flatMap((prompt) => parseFact(prompt)?.id ?? []);
  const seed = seedFor(child, today, 'lines', 0);
  const prompts = planLines({ set: set?.facts ?? facts, facts, lines: 1, stories: 1, seed });
  const plan: SittingPlan = {
    ...planAfterSheet(sheet.ruled.sat, 'row', [], untilEnough(source, leftMs)),
    purpose: 'lines',
    seed,
    prompts,
    onWrong: 'showAgain',
  };
  return { steps: [{ what: 'lines', plan }], waits: [] };
}

function isLines({ purpose, day }: SheetDay['ruled']['sat'], today: Day): boolean {
  return purpose === 'lines' && day === today;
}

/** Broken off as often as that, mending waits for another day: the day comes to its end whatever happens. */
const triesADay = 2;

/** What a child passed over twice while mending waits for another day: today ends on something finished. */
function isPassedOver({ parts }: SheetDay, today: Day, isTwins: boolean): boolean {
  const tried = parts.filter(
    ({ sat }) => sat.purpose === 'mending' && sat.day === today && (sat.twinOf !== undefined) === isTwins,
  );
  const wentOn = parts.at(-1)?.sat.purpose === 'row';
  return !wentOn && (tried.at(-1)?.sat.ended === 'finished' || tried.length >= triesADay);
}

function untilEnough({ settings }: DaySource, leftMs: number) {
  return { keepTimes: settings.keepTimes, enoughMs: Math.round(leftMs) };
}

function isLater({ change }: DaySource, step: LaterStep): boolean {
  return change.later?.includes(step) ?? false;
}

function waits(step: Waiting['step'], count: number): Planned {
  return { steps: [], waits: [{ step, count }] };
}
