import { scaleLog } from 'd3-scale';
import { markPath } from './marks';
import { useWidth } from './use-width';

export interface RatioChartProps {
  readonly says: string;
  readonly ratio: number;
  readonly interval: { readonly low: number; readonly high: number } | null;
  readonly shorter: string;
  readonly same: string;
  readonly longer: string;
}

const height = 84;
const middle = 30;

/** One ratio with the span it most likely lies in, against the line of no difference. */
export function RatioChart({ says, ratio, interval, shorter, same, longer }: RatioChartProps) {
  const { frame, width } = useWidth();
  const far = Math.max(
    2,
    ...[ratio, interval?.low ?? 1, interval?.high ?? 1].map((one) => Math.max(one, 1 / one)),
  );
  const x = scaleLog()
    .domain([1 / far, far])
    .range([12, width - 12]);
  return (
    <div class="chart-frame" ref={frame}>
      <svg role="img" aria-label={says} viewBox={`0 0 ${width} ${height}`} width={width} height={height}>
        <path class="axis" d={`M12 ${middle}H${width - 12}`} />
        <path class="same" d={`M${x(1)} 8V${middle + 22}`} />
        {interval && <path class="span" d={`M${x(interval.low)} ${middle}H${x(interval.high)}`} />}
        <path class="mark" d={markPath('dot')} transform={`translate(${x(ratio)} ${middle})`} />
        <text x={12} y={height - 8}>
          {shorter}
        </text>
        <text x={x(1)} y={height - 8} text-anchor="middle">
          {same}
        </text>
        <text x={width - 12} y={height - 8} text-anchor="end">
          {longer}
        </text>
      </svg>
    </div>
  );
}
