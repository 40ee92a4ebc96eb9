import { type PaperSize, paperSizes } from './paper-size';
import { inPages } from './sheet-layout';

/** How many cards a page is cut into. */
export const cardGrid = { columns: 3, rows: 6 } as const;

/** Cards keep this far from the edge on all sides, mm, so that a back lies behind its front however the page is turned. */
const edgeMm = 9;

/** One card's side and how far the grid is from the page's edge, mm. */
export interface CardMeasure {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly edgeMm: number;
}

/** The measure of a card on a paper. */
export function cardMeasure(size: PaperSize): CardMeasure {
  const { widthMm, heightMm } = paperSizes[size];
  return {
    widthMm: (widthMm - 2 * edgeMm) / cardGrid.columns,
    heightMm: (heightMm - 2 * edgeMm) / cardGrid.rows,
    edgeMm,
  };
}

/** A page of fronts and the page printed on its back, row by row; `null` where no card is. */
export interface CardSides<T> {
  readonly fronts: readonly (readonly (T | null)[])[];
  readonly backs: readonly (readonly (T | null)[])[];
}

/** Cards laid for printing on both sides, turned over the long edge: each row of backs runs the other way. */
export function layOutCards<T>(cards: readonly T[]): readonly CardSides<T>[] {
  const { columns, rows } = cardGrid;
  return inPages(cards, columns * rows).map((page) => {
    const whole = Array.from({ length: columns * rows }, (_, at) => page[at] ?? null);
    const fronts = inPages(whole, columns);
    return { fronts, backs: fronts.map((row) => row.toReversed()) };
  });
}
