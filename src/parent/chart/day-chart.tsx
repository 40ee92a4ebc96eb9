import { max } from 'd3-array';
import { line } from 'd3-shape';
import type { Day } from '../../core/record/stamp';
import { groupBy } from '../../readings/group-by';
import { Axes } from './axes';
import { dayScale, dayTicks, noonOf, room, valueScale } from './day-scale';
import { isFilled, type Mark, markPath } from './marks';
import { useWidth } from './use-width';

export interface DayPoint {
  readonly day: Day;
  readonly value: number;
  readonly mark: Mark;
}

/** A straight line from one day to another: a limit, or a line through the marks. */
export interface DayLine {
  readonly from: { readonly day: Day; readonly value: number };
  readonly to: { readonly day: Day; readonly value: number };
  readonly kind: 'level' | 'trend';
  /** Written at its end. */
  readonly label?: string;
}

export interface DayChartProps {
  /** The whole chart in a sentence, for who can't see it. */
  readonly says: string;
  readonly points: readonly DayPoint[];
  readonly lines?: readonly DayLine[];
  /** Days at which the conditions changed: nothing is set side by side across them. */
  readonly breaks?: readonly Day[];
  readonly bars?: boolean;
  readonly top?: number;
  readonly isCount?: boolean;
}

const height = 240;
const straight = line<readonly [number, number]>();

/** Values over days: marks or bars, limits and trends as lines, changes of conditions as gaps with a fine dotted line. */
export function DayChart(props: DayChartProps) {
  const { says, points, lines = [], breaks = [], bars = false, isCount = false } = props;
  const { frame, width } = useWidth();
  const rightEdge = width - (lines.some(({ label }) => label) ? room.names : room.right);
  const x = dayScale(
    points.map(({ day }) => day),
    rightEdge,
  );
  const values = [...points.map(({ value }) => value), ...lines.map(({ to }) => to.value)];
  const y = valueScale(props.top ?? max(values) ?? 1, height);
  const at = (day: Day) => x(noonOf(day));
  return (
    <div class="chart-frame" ref={frame}>
      <svg role="img" aria-label={says} viewBox={`0 0 ${width} ${height}`} width={width} height={height}>
        <Axes rightEdge={rightEdge} height={height} y={y} across={dayTicks(x, width)} isCount={isCount} />
        {breaks.map((day) => (
          <path key={day} class="break" d={`M${at(day) - 5} ${room.top}V${height - room.bottom}`} />
        ))}
        {lines.map(({ from, to, kind, label }) => (
          <g key={`${kind} ${from.day} ${to.day} ${from.value} ${label}`} class={kind}>
            <path
              d={
                straight([
                  [at(from.day) - (kind === 'level' ? 4 : 0), y(from.value)],
                  [at(to.day) + (kind === 'level' ? 4 : 0), y(to.value)],
                ]) ?? ''
              }
            />
            {label && (
              <text x={rightEdge + 6} y={y(to.value)} dy="0.32em">
                {label}
              </text>
            )}
          </g>
        ))}
        {bars ? (
          <path
            class="bar"
            d={points.map((point) => barPath(at(point.day), y(point.value), y(0))).join('')}
          />
        ) : (
          // One path for all marks of a shape: ten years have thousands.
          groupBy(points, ({ mark }) => mark).map((own) => (
            <Marks key={own[0]?.mark} points={own} at={at} y={y} />
          ))
        )}
      </svg>
    </div>
  );
}

interface MarksProps {
  readonly points: readonly DayPoint[];
  readonly at: (day: Day) => number;
  readonly y: (value: number) => number;
}

/** Marks of one shape. */
function Marks({ points, at, y }: MarksProps) {
  const [first] = points;
  if (!first) return null;
  const { mark } = first;
  return (
    <path
      class={isFilled[mark] ? 'mark' : 'mark open'}
      d={points.map(({ day, value }) => markPath(mark, at(day), y(value))).join('')}
    />
  );
}

function barPath(middle: number, top: number, foot: number): string {
  return `M${middle - 3},${Math.min(top, foot)}h6V${foot}h-6Z`;
}
