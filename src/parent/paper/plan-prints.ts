import { addDays, formatISO, parseISO } from 'date-fns';
import type { FactId } from '../../core/fact/fact';
import type { History } from '../../core/household/history';
import type { Child, Household } from '../../core/household/household';
import { codeOf, type PaperSheet } from '../../core/paper/paper-code';
import { freePaperSeed, paperFacts } from '../../core/paper/paper-facts';
import { fading } from '../../core/plan/plan-sheet';
import { weekday } from '../../core/plan/school-day';
import type { PaperShape, SheetPrinted } from '../../core/record/household-record';
import type { Draft } from '../../core/record/record';
import type { Day, Id } from '../../core/record/stamp';
import type { KeptFact } from '../../core/sheet/build-sheet';
import { summarize } from '../../core/summary/summarize';
import { dayFacts } from '../../state/day-facts';
import { findSet } from '../children/set-list';

/** A sheet about to be printed, or printed already. */
export interface SheetOnPaper extends PaperSheet {
  readonly child: Id;
  /** The day it is for. */
  readonly day: Day;
  readonly facts: readonly FactId[];
}

export interface PrintOrder {
  readonly children: readonly Child[];
  readonly from: Day;
  /** School days of each child. */
  readonly days: number;
  /** One set for all of them; `null` for each child's own. */
  readonly set: Id | null;
}

/** The sheets an order comes to, by day and then by child: each another one, and none that was printed before. */
export function planPrints(
  household: Household,
  history: History,
  order: PrintOrder,
): readonly SheetOnPaper[] {
  const printed = [...history.children.values()].flatMap((own): readonly SeedTaken[] => own.printed);
  const taken: SeedTaken[] = [...printed];
  const sheets = order.children.flatMap((child) => {
    const set = findSet(household, order.set ?? child.currentSet ?? '');
    if (!set || set.facts.length === 0) return [];
    const kept = keptOf(household, history, child, new Set(set.facts));
    const { length, layout, keptShare, schoolDays } = child.settings;
    const hasKept = kept.length > 0 && Math.round(length * keptShare) > 0;
    const shape: PaperShape = { length, layout, hasKept };
    return schoolDaysFrom(order.from, order.days, schoolDays).map((day): SheetOnPaper => {
      const seed = freePaperSeed(child.id, day, set.id, taken);
      taken.push({ set: set.id, seed });
      const sheet = { set: set.id, seed, shape };
      return { ...sheet, child: child.id, day, facts: paperFacts(sheet, set.facts, kept, keptShare) };
    });
  });
  return sheets.toSorted((x, y) => (x.day < y.day ? -1 : x.day > y.day ? 1 : 0));
}

type SeedTaken = Pick<SheetPrinted, 'set' | 'seed'>;

/** What is written down of a sheet when it goes to the printer, on a day. */
export function printedDraft({ child, day: forDay, set, seed, shape, facts }: SheetOnPaper, day: Day): Draft {
  return { kind: 'sheetPrinted', child, day, forDay, set, seed, shape, facts };
}

/** Whether two are the same sheet, whoever entered or printed it. */
export function isSameSheet(one: PaperSheet, other: PaperSheet): boolean {
  return codeOf(one) === codeOf(other);
}

/** The next days of the week on which the child has school, the first of them perhaps the day itself. */
export function schoolDaysFrom(from: Day, count: number, schoolDays: readonly number[]): readonly Day[] {
  const first = parseISO(from);
  // A child with no school day at all has the days as they come.
  const isWanted = (day: Day) => schoolDays.length === 0 || schoolDays.includes(weekday(day));
  return Array.from({ length: 7 * count }, (_, on) =>
    formatISO(addDays(first, on), { representation: 'date' }),
  )
    .filter(isWanted)
    .slice(0, count);
}

function keptOf(
  household: Household,
  history: History,
  { id }: Child,
  set: ReadonlySet<FactId>,
): readonly KeptFact[] {
  const kept = dayFacts(household, id).kept.filter((fact) => !set.has(fact));
  const { facts } = summarize(history.children.get(id)?.sittings ?? []);
  return kept.map((fact) => ({ fact, ...fading(facts.get(fact)) }));
}
