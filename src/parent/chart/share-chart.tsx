import { max } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { useWidth } from './use-width';

export interface ShareRow {
  readonly label: string;
  readonly value: number;
  /** What chance alone would give, drawn as an upright line across the bar. */
  readonly chance: number;
}

export interface ShareChartProps {
  readonly says: string;
  readonly rows: readonly ShareRow[];
}

const rowHeight = 44;
const barHeight = 12;

/** Counts as bars, their names above them, and where chance alone would have put each. */
export function ShareChart({ says, rows }: ShareChartProps) {
  const { frame, width } = useWidth();
  const height = rows.length * rowHeight;
  const x = scaleLinear()
    .domain([0, max(rows, ({ value, chance }) => Math.max(value, chance)) ?? 1])
    .range([0, width - 48]);
  return (
    <div class="chart-frame" ref={frame}>
      <svg role="img" aria-label={says} viewBox={`0 0 ${width} ${height}`} width={width} height={height}>
        {rows.map(({ label, value, chance }, row) => {
          const top = row * rowHeight + 20;
          return (
            <g key={label}>
              <text x={0} y={top - 6}>
                {label}
              </text>
              <rect class="bar" x={0} y={top} width={x(value)} height={barHeight} />
              <path class="halo" d={`M${x(chance)} ${top}V${top + barHeight}`} />
              <path class="chance" d={`M${x(chance)} ${top - 4}V${top + barHeight + 4}`} />
              <text x={Math.max(x(value), x(chance)) + 8} y={top + barHeight - 1}>
                {value}
              </text>
            </g>
          );
        })}
      </svg>
    </div>
  );
}
