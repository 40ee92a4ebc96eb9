import { type Operation, parseFact } from '../fact/fact';
import type { Marked } from '../marking/marked';
import { isMiss } from '../marking/mend';

/**
 * How a place looks in the piece: `stitch` right, `hole` wrong or skipped, `mended` put right later, `plain` not
 * reached and woven in plainly, `loose` not reached while the day goes on.
 */
export type StitchState = 'stitch' | 'hole' | 'mended' | 'plain' | 'loose';

/** One place of the piece, in the shape of its operation's sign. */
export interface Stitch {
  readonly place: number;
  readonly op: Operation;
  readonly state: StitchState;
}

/** Stitches in a row of the piece. */
const stitchesInRow = 5;

/** The piece of a sheet, five to a row; `later` are its extra rows and mendings so far. */
export function stitchRows(
  sheet: Marked,
  later: readonly Marked[],
  isDayEnded: boolean,
): readonly (readonly Stitch[])[] {
  const mended = new Set(
    later.flatMap(({ places }) => places.flatMap((p) => (p.outcome === 'right' ? [p.prompt] : []))),
  );
  const stitches = sheet.places.map((marked): Stitch => {
    const { place, prompt, outcome } = marked;
    const op = parseFact(prompt)?.op ?? 'add';
    if (outcome === 'right') return { place, op, state: 'stitch' };
    if (isMiss(marked)) return { place, op, state: mended.has(prompt) ? 'mended' : 'hole' };
    return { place, op, state: isDayEnded ? 'plain' : 'loose' };
  });
  return Array.from({ length: Math.ceil(stitches.length / stitchesInRow) }, (_, row) =>
    stitches.slice(row * stitchesInRow, (row + 1) * stitchesInRow),
  );
}
