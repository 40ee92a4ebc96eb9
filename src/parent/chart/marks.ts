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

/** The outline of a mark around 0, 0. */
export function markPath(mark: Mark): string {
  return symbol(types[mark], area)() ?? '';
}

/** Whether a mark is filled: what was sat with the clock is, what was sat without is open. */
export const isFilled: Readonly<Record<Mark, boolean>> = {
  dot: true,
  diamond: false,
  square: true,
  triangle: false,
  cross: false,
};
