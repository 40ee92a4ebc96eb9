import { isSpokenCheckWaiting } from '../look-back/look-back-due';
import { chooseSpoken } from '../look-back/spoken-check';
import { nextRow, rowsFor } from '../marking/rows';
import { withHeard } from '../memory/heard-aloud';
import type { ChildSettings } from '../record/settings';
import { isAccurate } from '../summary/accuracy';
import { rowsSent } from './after-sheet';
import type { DaySource } from './day-source';
import { isSpreadSat } from './plan-spread';
import { seedFor } from './seed';
import type { SheetDay } from './sheet-day';
import type { Need, Waiting } from './step';
import { isTrialOn } from './trial-day';

/** What waits for the parent, today's sheets and what the minutes left undone among it. */
export function needsOf(
  source: DaySource,
  today: readonly SheetDay[],
  waits: readonly Waiting[],
): readonly Need[] {
  const { set, settings, summary } = source;
  const needs: Need[] = [];
  if (isSpreadSat(source)) needs.push({ what: 'spreadSat' });
  else if (!source.spread && (!set || set.facts.length === 0)) needs.push({ what: 'noSet' });
  for (const sheet of today) needs.push(...needsOfSheet(settings, sheet));
  if (waits.length > 0) needs.push({ what: 'waited', waits });
  needs.push(...spokenCheck(source));
  if (set && !settings.timed && !isTrialOn(source) && isAccurate(summary, new Set(set.facts)))
    needs.push({ what: 'proposeClock' });
  return needs;
}

/** With every tenth sheet a few facts are asked aloud (common practice, no source); one check at most waits. */
function spokenCheck({ child, today, settings, set, kept, summary, spoken }: DaySource): readonly Need[] {
  const last = spoken.at(-1)?.day ?? null;
  if (!isSpokenCheckWaiting(summary, last, settings.spokenEvery)) return [];
  const facts = chooseSpoken({
    today,
    among: [...(set?.facts ?? []), ...kept],
    facts: withHeard(summary.facts, spoken),
    seed: seedFor(child, last ?? '', 'spoken', 0),
  });
  return facts.length > 0 ? [{ what: 'spokenCheck', facts }] : [];
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
