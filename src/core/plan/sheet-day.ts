import type { RuledSat } from '../household/history';
import { markSat } from '../marking/mark-sat';
import type { Marked } from '../marking/marked';
import { type Miss, missesToMend } from '../marking/mend';
import { type Stitch, stitchRows } from '../piece/stitches';
import type { ChildSettings } from '../record/settings';

/** A sheet with everything that hangs on it: its extra rows, and what has been mended. */
export interface SheetDay {
  readonly ruled: RuledSat;
  readonly marked: Marked;
  readonly rows: readonly Marked[];
  /** Its rows and mendings, in the order they were sat. */
  readonly parts: readonly RuledSat[];
  /** The same, marked. */
  readonly later: readonly Marked[];
  /** Misses of the sheet and its rows not put right since. */
  readonly toMend: readonly Miss[];
}

/** The sheets among sittings given in order, each with its rows and mending; voided sittings are left out. */
export function sheetDays(
  sittings: readonly RuledSat[],
  limits: ChildSettings['limits'],
): readonly SheetDay[] {
  const inForce = sittings.filter(({ rulings }) => !rulings.voided);
  const mark = ({ sat, rulings }: RuledSat) => markSat(sat, rulings, limits);
  return inForce
    .filter(({ sat }) => sat.purpose === 'sheet')
    .map((ruled) => {
      const parts = inForce.filter(({ sat }) => sat.of === ruled.sat.id);
      const marked = mark(ruled);
      const later = parts.map(mark);
      const rows = parts.flatMap(({ sat }, index) => (sat.purpose === 'row' ? (later[index] ?? []) : []));
      return { ruled, marked, rows, parts, later, toMend: missesToMend(marked, later) };
    });
}

/** The piece of a sheet, rows of stitches; once the day has ended what was not reached is woven in plainly. */
export function pieceOf(sheet: SheetDay, isDayEnded: boolean): readonly (readonly Stitch[])[] {
  return stitchRows(sheet.marked, sheet.later, isDayEnded);
}
