/** Lengths of the long cloth side by side on a page, and how many rows of stitches each is long. */
export const clothGrid = { strips: 4, rows: 40 } as const;

/** What a strip of the cloth holds: some rows of a piece, from its `from`th on. */
export interface StripPart<P> {
  readonly piece: P;
  readonly from: number;
  readonly rows: number;
}

/** The cloth cut into strips as long as a page, one after the other; a piece may go on at the next strip's head. */
export function layOutCloth<P>(
  pieces: readonly P[],
  rowsOf: (piece: P) => number,
): readonly (readonly StripPart<P>[])[] {
  const strips: StripPart<P>[][] = [];
  let left = 0;
  for (const piece of pieces) {
    let from = 0;
    for (let open = rowsOf(piece); open > 0; ) {
      if (left === 0) {
        strips.push([]);
        left = clothGrid.rows;
      }
      const rows = Math.min(open, left);
      strips.at(-1)?.push({ piece, from, rows });
      from += rows;
      open -= rows;
      left -= rows;
    }
  }
  return strips;
}
