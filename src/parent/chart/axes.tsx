import type { ScaleLinear } from 'd3-scale';
import { room } from './day-scale';

export interface AxesProps {
  /** Where the plot ends, px from the left. */
  readonly rightEdge: number;
  readonly height: number;
  readonly y: ScaleLinear<number, number>;
  readonly across: readonly { readonly x: number; readonly text: string }[];
  /** Whole numbers only, for counts. */
  readonly isCount: boolean;
}

/** The numbers at the left with a fine line each, and the days below. */
export function Axes({ rightEdge, height, y, across, isCount }: AxesProps) {
  const ticks = y.ticks(5).filter((tick) => !isCount || Number.isInteger(tick));
  return (
    <g class="axes">
      {ticks.map((tick) => (
        <g key={tick}>
          <path d={`M${room.left} ${y(tick)}H${rightEdge}`} />
          <text x={room.left - 8} y={y(tick)} dy="0.32em" text-anchor="end">
            {y.tickFormat(5)(tick)}
          </text>
        </g>
      ))}
      {across.map(({ x, text }) => (
        <text key={text} x={x} y={height - room.bottom + 18} text-anchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}
