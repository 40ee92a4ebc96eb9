/** A place in the grid; −1 is the headers' row or column, so that (−1, −1) is the corner. */
export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/** Where a key leads from a place; `null` for keys that don't move. The edges are walls. */
export function walk(key: string, from: GridPlace, size: GridSize): GridPlace | null {
  const to = step(key, from, size);
  return to && { row: within(to.row, size.rows - 1), column: within(to.column, size.columns - 1) };
}

function step(key: string, { row, column }: GridPlace, size: GridSize): GridPlace | null {
  switch (key) {
    case 'ArrowUp':
      return { row: row - 1, column };
    case 'ArrowDown':
      return { row: row + 1, column };
    case 'ArrowLeft':
      return { row, column: column - 1 };
    case 'ArrowRight':
      return { row, column: column + 1 };
    case 'Home':
      return { row, column: -1 };
    case 'End':
      return { row, column: size.columns - 1 };
    case 'PageUp':
      return { row: -1, column };
    case 'PageDown':
      return { row: size.rows - 1, column };
    default:
      return null;
  }
}

function within(at: number, last: number): number {
  return Math.max(-1, Math.min(last, at));
}
