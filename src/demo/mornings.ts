import { markSat } from '../core/marking/mark-sat';
import type { Marked } from '../core/marking/marked';
import { rowsFor } from '../core/marking/rows';
import { noRulings } from '../core/marking/sat-rulings';
import type { Step } from '../core/plan/step';
import type { Sat } from '../core/record/sat';
import { defaultChildSettings } from '../core/record/settings';
import type { Aboard } from './aboard';
import { stagedThrows } from './assumptions';
import type { BoatLog } from './boat-log';
import type { SatStep } from './child-days';
import type { CrewMember } from './crew';
import { ruledOn } from './parent-rulings';

const toRuleMs = 40_000;
/** More steps than any day has. */
const mostSteps = 20;

/** A child's whole morning, step by step; its sheet. `nth` is the school day. */
export function sitMorning({ member, days, mishapOn }: Aboard, log: BoatLog, nth: number): Sat | null {
  let sheet: Sat | null = null;
  for (let count = 0; count < mostSteps; count += 1) {
    const step = nextStep(days.plan().steps, member);
    if (!step) break;
    const planned = step.what === 'sheet' ? mishapOn(step.plan, nth) : null;
    const sat = days.sitStep(step, { mishap: planned?.mishap ?? null });
    if (planned?.isVoid) log.add(ruledOn(sat, { what: 'void' }), days.nowMs() + toRuleMs);
    else if (step.what === 'sheet') sheet = sat;
  }
  return sheet;
}

/** The morning of a child who is in the middle of it: a sheet that brings rows, and one of them still to do. */
export function sitHalfMorning({ member, days }: Aboard): void {
  for (let count = 0; count < mostSteps; count += 1) {
    const { steps, sheets } = days.plan();
    const sheet = sheets.at(-1);
    const isHalf = sheet !== undefined && sheet.rows.length >= rowsOf(sheet.marked) - 1;
    const step = nextStep(steps, member);
    if (isHalf || !step) return;
    days.sitStep(step, step.what === 'sheet' ? { takes: bringsRows, throws: stagedThrows } : {});
  }
}

function bringsRows(sheet: Sat): boolean {
  return rowsOf(markSat(sheet, noRulings, defaultChildSettings.limits)) > 0;
}

function rowsOf({ band }: Marked): number {
  return rowsFor(band, defaultChildSettings.rows);
}

/** The step taken next: where cards are the child's choice, that choice. */
function nextStep(steps: readonly Step[], { choosesCards }: CrewMember): SatStep | undefined {
  return steps.find(
    (step): step is SatStep => 'plan' in step && (choosesCards || step.what !== 'cards' || !step.isChoice),
  );
}
