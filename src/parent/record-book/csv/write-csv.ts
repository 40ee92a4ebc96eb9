import Papa from 'papaparse';
import type { History } from '../../../core/household/history';
import type { Household } from '../../../core/household/household';
import { bookOf, type Entry } from '../../marking/book-of';
import { answerColumns, type Cell, lineOf, sittingColumns } from './columns';

/** Which table is wanted. */
export type Table = 'sittings' | 'answers';

/** Sittings written before the page gets room to do something else. */
const lot = 150;
/** By it, spreadsheets take the text for UTF-8. */
const byteOrderMark = '\uFEFF';
// Besides = + - @: a tab or a line's end may stand before them.
const formula = /^[=+\-@\t\r\n]/;

/** A table of everyone's sittings, or of their answers, oldest first. */
export async function writeCsv(table: Table, household: Household, history: History): Promise<Blob> {
  const entries = bookOf(household, history).toReversed();
  const parts: Blob[] = [new Blob([byteOrderMark, csvLines([headOf(table)])])];
  for (let from = 0; from < entries.length; from += lot) {
    const lines = entries.slice(from, from + lot).flatMap((entry) => linesOf(table, entry, household));
    if (lines.length > 0) parts.push(new Blob([csvLines(lines)]));
    await new Promise((resolve) => setTimeout(resolve));
  }
  return new Blob(parts, { type: 'text/csv' });
}

function headOf(table: Table): readonly string[] {
  return Object.keys(table === 'sittings' ? sittingColumns : answerColumns);
}

function linesOf(table: Table, entry: Entry, household: Household): readonly (readonly Cell[])[] {
  if (table === 'sittings') return [lineOf(sittingColumns, entry, household)];
  return entry.marked.places.map((place) => lineOf(answerColumns, { entry, place }, household));
}

/** Lines of cells as RFC 4180 has them, each with its end; what a spreadsheet would reckon out is guarded by a quote mark. */
export function csvLines(lines: readonly (readonly Cell[])[]): string {
  const options = { newline: '\r\n', header: false, escapeFormulae: formula };
  return `${Papa.unparse(
    lines.map((cells) => [...cells]),
    options,
  )}\r\n`;
}
