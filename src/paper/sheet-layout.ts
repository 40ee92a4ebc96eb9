import { type FactId, parseFact } from '../core/fact/fact';
import type { ChildSettings } from '../core/record/settings';
import { marginMm, type PaperSize, paperSizes } from './paper-size';

/** Facts in a row. */
export const across = 5;

/** What the name and the date take at the head of a sheet, and the code at its foot, mm. */
export const headMm = 16;
export const footMm = 8;

/** Where the facts of one sheet stand on its pages: lengths in mm. */
export interface SheetLayout {
  /** Rows of five on each page. */
  readonly pages: readonly (readonly (readonly FactId[])[])[];
  readonly rowMm: number;
  /** The size of the figures: of the type, not of a digit. */
  readonly figureMm: number;
  readonly columnMm: number;
}

const figures = { acrossMost: 6.6, stacked: 8 } as const;

/** A child's written answer wants so much beside the sign, mm (our own decision, no source). */
const answerMm = 12;
const columnGapMm = 3;

/** A digit, a sign or a space as a share of the size of the type, measured on the face. */
const ems = { digit: 0.63, sign: 0.66, space: 0.25 } as const;

const rowMm = { least: 11, most: 28, stacked: 34 } as const;

/** Lays out a sheet: the figures as large as the column lets them be beside room for an answer. */
export function layOutSheet(
  facts: readonly FactId[],
  layout: ChildSettings['layout'],
  size: PaperSize,
): SheetLayout {
  const { widthMm, heightMm } = paperSizes[size];
  const columnMm = (widthMm - 2 * marginMm) / across;
  const freeMm = heightMm - 2 * marginMm - headMm - footMm;
  const rows = rowsOf(facts);
  if (layout === 'stacked') {
    const perPage = Math.floor(freeMm / rowMm.stacked);
    return { pages: inPages(rows, perPage), rowMm: rowMm.stacked, figureMm: figures.stacked, columnMm };
  }
  const perPage = Math.floor(freeMm / rowMm.least);
  const widest = Math.max(0, ...facts.map(emsOf));
  return {
    pages: inPages(rows, perPage),
    rowMm: Math.min(rowMm.most, freeMm / Math.min(perPage, Math.max(1, rows.length))),
    figureMm: Math.min(figures.acrossMost, (columnMm - columnGapMm - answerMm) / widest),
    columnMm,
  };
}

/** Rows of five, the last one perhaps shorter. */
export function rowsOf<T>(list: readonly T[]): readonly (readonly T[])[] {
  return inPages(list, across);
}

/** Lots of so many, in their order. */
export function inPages<T>(list: readonly T[], each: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(list.length / each) }, (_, page) =>
    list.slice(page * each, (page + 1) * each),
  );
}

/** How wide `7 × 8 =` is, in ems. */
function emsOf(id: FactId): number {
  const fact = parseFact(id);
  const digits = fact ? `${fact.a}${fact.b}`.length : 0;
  return digits * ems.digit + 2 * ems.sign + 3 * ems.space;
}
