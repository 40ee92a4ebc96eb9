import { symbol, symbolCircle, symbolDiamond, symbolSquare, symbolTimes, symbolTriangle } from 'd3-shape';

/** A mark is told by its shape and whether it is filled, never by a colour. */
export type Mark = 'dot' | 'diamond' | 'square' | 'triangle' | 'cross';

const types = {
  dot: symbolCircle,
  diamond: symbolDiamond,
  square: symbolSquare,
  triangle: symbolTriangle,
  cross: symbolTimes,
} as const;

const area = 44;

/** The outline of a mark around a point; several may follow each other in one path. */
export function markPath(mark: Mark, x = 0, y = 0): string {
  const outline = symbol(types[mark], area)() ?? '';
  // Each of these commands ends with its own point; all others are relative to it.
  return outline.replace(/([MLA])([^A-Za-z]+)/g, (_, command: string, numbers: string) => {
    const all = numbers.split(',').map(Number);
    const [dx = 0, dy = 0] = all.splice(-2);
    return command + [...all, dx + x, dy + y].join(',');
  });
}

/** Whether a mark is filled: what was sat with the clock is, what was sat without is open. */
export const isFilled: Readonly<Record<Mark, boolean>> = {
  dot: true,
  diamond: false,
  square: true,
  triangle: false,
  cross: false,
};
