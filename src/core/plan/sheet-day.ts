import type { FactId } from '../fact/fact';
import type { RuledSat } from '../household/history';
import { markSat } from '../marking/mark-sat';
import type { Marked } from '../marking/marked';
import { missesToMend } from '../marking/mend';
import type { ChildSettings } from '../record/settings';
import type { Id } from '../record/stamp';

/** A sheet with everything that hangs on it: its extra rows, and what has been mended. */
export interface SheetDay {
  readonly ruled: RuledSat;
  readonly marked: Marked;
  readonly rows: readonly Marked[];
  /** Misses of the sheet and its rows not yet put right. */
  readonly toMend: readonly Miss[];
  readonly mended: ReadonlySet<FactId>;
}

/** A fact missed, with what the child gave last; `null` where it was skipped. */
export interface Miss {
  readonly fact: FactId;
  readonly gave: string | null;
}

/** The sheets among sittings given in order, each with its rows and mending; voided sittings are left out. */
export function sheetDays(
  sittings: readonly RuledSat[],
  limits: ChildSettings['limits'],
): readonly SheetDay[] {
  const inForce = sittings.filter(({ rulings }) => !rulings.voided);
  return inForce
    .filter(({ sat }) => sat.purpose === 'sheet')
    .map((ruled) => sheetDay(ruled, belongingTo(ruled.sat.id, inForce), limits));
}

function belongingTo(sheet: Id, sittings: readonly RuledSat[]): readonly RuledSat[] {
  return sittings.filter(({ sat }) => sat.of === sheet);
}

function sheetDay(
  ruled: RuledSat,
  parts: readonly RuledSat[],
  limits: ChildSettings['limits'],
): SheetDay {
  const mark = ({ sat, rulings }: RuledSat) => markSat(sat, rulings, limits);
  const marked = mark(ruled);
  const rows = parts.filter(({ sat }) => sat.purpose === 'row').map(mark);
  const mendings = parts.filter(({ sat }) => sat.purpose === 'mending').map(mark);
  const mended = new Set(mendings.flatMap(rightFacts));
  const toMend = missesToMend(marked, rows).filter(({ fact }) => !mended.has(fact));
  return { ruled, marked, rows, toMend, mended };
}

function rightFacts(marked: Marked): readonly FactId[] {
  return marked.places.flatMap(({ prompt, outcome }) => (outcome === 'right' ? [prompt as FactId] : []));
}
