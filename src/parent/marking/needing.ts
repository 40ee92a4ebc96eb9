import { formatISO, parseISO, subDays } from 'date-fns';
import type { Household } from '../../core/household/household';
import type { ChildDay } from '../../core/plan/plan-day';
import type { Day, Id } from '../../core/record/stamp';
import { needsOfParent, type SheetNeed } from '../today/parent-needs';
import { todayWords } from '../today/words';
import type { Entry } from './book-of';

/** Sheets interrupted longer ago have been left without a band, and are no longer asked about. */
const askedForDays = 7;

/** The sheets that need the parent, each with why: all that *Today* says of them, and what was interrupted lately. */
export function needingOf(
  sheets: readonly Entry[],
  { children }: Pick<Household, 'children'>,
  days: ReadonlyMap<Id, ChildDay>,
  today: Day,
): ReadonlyMap<Entry, string> {
  const now = new Map<Id, string[]>();
  for (const child of children) {
    const day = days.get(child.id);
    for (const need of day ? needsOfParent(child, day) : [])
      if ('sitting' in need) now.set(need.sitting, [...(now.get(need.sitting) ?? []), whyText(need)]);
  }
  const since = formatISO(subDays(parseISO(today), askedForDays), { representation: 'date' });
  const why = (entry: Entry) =>
    now.get(entry.sat.id)?.join(' ') ?? (isLeftWithoutBand(entry, since) ? todayWords.interrupted : null);
  return new Map(
    sheets.flatMap((entry) => {
      const text = why(entry);
      return text === null ? [] : [[entry, text] as const];
    }),
  );
}

function isLeftWithoutBand(entry: Entry, since: Day): boolean {
  // The day first: marking ten years of sheets for a list would take seconds.
  return entry.sat.day > since && entry.marked.noBand === 'interrupted';
}

function whyText(need: SheetNeed): string {
  switch (need.what) {
    case 'rowsWaiting':
      return todayWords.rowsWaiting(need.rows);
    case 'rowsStopped':
      return todayWords.rowsStopped;
    case 'interrupted':
      return todayWords.interrupted;
    case 'doubtfulSlip':
      return todayWords.doubtfulSlip(need.slips.length);
  }
}
