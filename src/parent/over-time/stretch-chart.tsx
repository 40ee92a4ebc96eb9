import type { ComponentChildren } from 'preact';
import type { Id } from '../../core/record/stamp';
import type { Stretch, TrendPoint } from '../../readings/rates/trend';
import { DayChart, type DayLine } from '../chart/day-chart';
import { Figure } from '../chart/figure';
import type { Mark } from '../chart/marks';
import { Sample } from '../chart/sample';
import { shortDay } from '../parts/when';
import { conditionNames, overTimeWords } from './words';

export interface StretchChartProps {
  readonly title: string;
  readonly stretches: readonly Stretch[];
  readonly mark: Mark;
  readonly levels?: readonly DayLine[];
  readonly isCount?: boolean;
  readonly top?: number;
  readonly setName: (set: Id | null) => string;
}

/** What is followed from sheet to sheet: a line through each stretch, none across what changed. */
export function StretchChart(props: StretchChartProps) {
  const { title, stretches, mark, levels = [], isCount = false, setName } = props;
  const points = stretches.flatMap((stretch) => stretch.points);
  if (points.length === 0) return null;
  const text = (value: number) => (isCount ? `${value}` : value.toFixed(1));
  const trends = stretches.flatMap(trendLine);
  const breaks = stretches.slice(1).flatMap(({ points: [first] }) => (first ? [first.day] : []));
  return (
    <Figure
      title={title}
      legend={<Legend mark={mark} levels={levels.length} trends={trends} breaks={breaks.length} />}
      table={() => ({ columns: columnsOf(isCount), rows: rowsOf(stretches, text, isCount, setName) })}
    >
      <DayChart
        says={saysOf(title, points, text)}
        points={points.map(({ day, value }) => ({ day, value, mark }))}
        lines={[...levels, ...trends]}
        breaks={breaks}
        isCount={isCount}
        {...(props.top === undefined ? {} : { top: props.top })}
      />
    </Figure>
  );
}

function trendLine({ points, line }: Stretch): readonly DayLine[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!line || !first || !last) return [];
  return [
    {
      from: { day: first.day, value: line.first },
      to: { day: last.day, value: line.last },
      kind: line.interval.low <= 0 && line.interval.high >= 0 ? 'perhaps' : 'trend',
    },
  ];
}

function saysOf(title: string, points: readonly TrendPoint[], text: (value: number) => string): string {
  const values = points.map(({ value }) => value);
  return overTimeWords.says(
    title,
    points.length,
    shortDay(points[0]?.day ?? ''),
    shortDay(points.at(-1)?.day ?? ''),
    text(Math.min(...values)),
    text(Math.max(...values)),
  );
}

function columnsOf(isCount: boolean): readonly string[] {
  const { day, value, of, set, changed } = overTimeWords.columns;
  return isCount ? [day, value, of, set, changed] : [day, value, set, changed];
}

function rowsOf(
  stretches: readonly Stretch[],
  text: (value: number) => string,
  isCount: boolean,
  setName: (set: Id | null) => string,
): readonly (readonly string[])[] {
  return stretches
    .flatMap(({ points, changed }) =>
      points.map(({ day, value, conditions }, index) => [
        shortDay(day),
        text(value),
        ...(isCount ? [`${conditions.length}`] : []),
        setName(conditions.set),
        index === 0 ? changed.map((key) => conditionNames[key]).join(', ') : '',
      ]),
    )
    .toReversed();
}

interface LegendProps {
  readonly mark: Mark;
  readonly levels: number;
  readonly trends: readonly DayLine[];
  readonly breaks: number;
}

function Legend({ mark, levels, trends, breaks }: LegendProps) {
  const isWith = mark === 'dot' || mark === 'square';
  const parts: ComponentChildren[] = [
    <span key="mark">
      <Sample of={mark} /> {isWith ? overTimeWords.withMark : overTimeWords.withoutMark}
    </span>,
    levels > 0 && (
      <span key="level">
        <Sample of="level" /> {overTimeWords.limitNote}
      </span>
    ),
    trends.some(({ kind }) => kind === 'trend') && (
      <span key="trend">
        <Sample of="trend" /> {overTimeWords.lineNote}
      </span>
    ),
    trends.some(({ kind }) => kind === 'perhaps') && (
      <span key="perhaps">
        <Sample of="perhaps" /> {overTimeWords.perhapsNote}
      </span>
    ),
    breaks > 0 && <span key="break">{overTimeWords.breakNote}</span>,
  ];
  return <>{parts}</>;
}
