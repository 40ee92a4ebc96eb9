import type { History, RuledSat } from '../../core/household/history';
import type { Household } from '../../core/household/household';
import { bareCode, type CodeFault, codeOf, readCode } from '../../core/paper/paper-code';
import { paperFacts } from '../../core/paper/paper-facts';
import type { Day, Id } from '../../core/record/stamp';
import { findSet } from '../children/set-list';
import { isSameSheet, type SheetOnPaper } from './plan-prints';

/** A printed sheet, and the sitting it was entered as, if it was. */
export interface FoundSheet {
  /** The record of its printing; `null` where it was printed elsewhere. */
  readonly record: Id | null;
  readonly sheet: SheetOnPaper;
  readonly entered: RuledSat | null;
}

/** Every sheet printed for the children, the newest day first, those of one day in the order they were printed. */
export function printedSheets(household: Household, history: History): readonly FoundSheet[] {
  const found = household.children.flatMap(({ id }) => {
    const own = history.children.get(id);
    return (own?.printed ?? []).map((record): FoundSheet => {
      const sheet = { ...record, day: record.forDay };
      return { record: record.id, sheet, entered: enteredAs(own?.sittings ?? [], sheet) };
    });
  });
  return found.toSorted(({ sheet: x }, { sheet: y }) => (x.day < y.day ? 1 : x.day > y.day ? -1 : 0));
}

/** The sitting of a child that a sheet was entered as; voided ones were taken out again. */
function enteredAs(sittings: readonly RuledSat[], sheet: SheetOnPaper): RuledSat | null {
  const isOf = ({ sat, rulings }: RuledSat) =>
    sat.paper === true &&
    sat.purpose === 'sheet' &&
    !rulings.voided &&
    sat.set === sheet.set &&
    sat.seed === sheet.seed &&
    sat.prompts.join() === sheet.facts.join();
  return sittings.findLast(isOf) ?? null;
}

/** The sheets whose code begins with what was typed so far; all of them before anything is. */
export function matching(sheets: readonly FoundSheet[], text: string): readonly FoundSheet[] {
  const digits = bareCode(text);
  return sheets.filter(({ sheet }) => bareCode(codeOf(sheet)).startsWith(digits));
}

/** Why a code leads nowhere: what is wrong with it, or that its kept facts are known only where it was printed. */
export type NotFound = CodeFault | 'elsewhere';

/** The sheet of a whole code: one printed here, or one made again from its set and seed for a child to be named. */
export function sheetOfCode(
  text: string,
  printed: readonly FoundSheet[],
  household: Household,
  day: Day,
): FoundSheet | NotFound {
  const read = readCode(text, household.ownSets);
  if (typeof read === 'string') return read;
  const here = printed.find(({ sheet }) => isSameSheet(sheet, read));
  if (here) return here;
  const facts = findSet(household, read.set)?.facts ?? [];
  if (read.shape.hasKept || facts.length === 0) return 'elsewhere';
  const sheet = { ...read, child: '', day, facts: paperFacts(read, facts, [], 0) };
  return { record: null, sheet, entered: null };
}
