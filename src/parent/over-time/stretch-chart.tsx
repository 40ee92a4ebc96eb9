import type { ComponentChildren } from 'preact';
import type { Id } from '../../core/record/stamp';
import type { Stretch, TrendPoint } from '../../readings/rates/trend';
import { DayChart, type DayLine } from '../chart/day-chart';
import { Figure } from '../chart/figure';
import type { Mark } from '../chart/marks';
import { Sample } from '../chart/sample';
import { shortDay } from '../parts/when';
import type { InterruptedSheet } from './interrupted';
import { conditionNames, overTimeWords } from './words';

export interface StretchChartProps {
  readonly title: string;
  readonly stretches: readonly Stretch[];
  readonly mark: Mark;
  readonly levels?: readonly DayLine[];
  readonly interrupted?: readonly InterruptedSheet[];
  readonly isCount?: boolean;
  readonly top?: number;
  readonly setName: (set: Id | null) => string;
}

/** What is followed from sheet to sheet: a line through each stretch, none across what changed. */
export function StretchChart(props: StretchChartProps) {
  const { title, stretches, mark, levels = [], interrupted = [], isCount = false, setName } = props;
  const points = stretches.flatMap((stretch) => stretch.points);
  const all = [...points, ...interrupted];
  if (all.length === 0) return null;
  const text = (value: number) => (isCount ? `${value}` : value.toFixed(1));
  const trends = stretches.flatMap(trendLine);
  const breaks = stretches.slice(1).flatMap(({ points: [first] }) => (first ? [first.day] : []));
  return (
    <Figure
      title={title}
      legend={
        <Legend
          mark={mark}
          levels={levels.length}
          trends={trends.length}
          breaks={breaks.length}
          interrupted={interrupted.length}
        />
      }
      table={() => ({
        columns: columnsOf(isCount),
        rows: rowsOf(stretches, interrupted, text, isCount, setName),
      })}
    >
      <DayChart
        says={saysOf(title, all, text)}
        points={[
          ...points.map(({ day, value }) => ({ day, value, mark })),
          ...interrupted.map(({ day, value }) => ({ day, value, mark: 'cross' as const })),
        ]}
        lines={[...levels, ...trends]}
        breaks={breaks}
        isCount={isCount}
        {...(props.top === undefined ? {} : { top: props.top })}
      />
    </Figure>
  );
}

/** A line is drawn where it rises or falls beyond chance; any other would be read as more than it says. */
function trendLine({ points, line }: Stretch): readonly DayLine[] {
  const [first, last] = [points[0], points.at(-1)];
  const isClear = line !== null && (line.interval.low > 0 || line.interval.high < 0);
  if (!line || !isClear || !first || !last) return [];
  return [
    { from: { day: first.day, value: line.first }, to: { day: last.day, value: line.last }, kind: 'trend' },
  ];
}

type Shown = Pick<TrendPoint, 'day' | 'value'>;

function saysOf(title: string, all: readonly Shown[], text: (value: number) => string): string {
  const values = all.map(({ value }) => value);
  const days = all.map(({ day }) => day).toSorted();
  return overTimeWords.says(
    title,
    all.length,
    shortDay(days[0] ?? ''),
    shortDay(days.at(-1) ?? ''),
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
  interrupted: readonly InterruptedSheet[],
  text: (value: number) => string,
  isCount: boolean,
  setName: (set: Id | null) => string,
): readonly (readonly string[])[] {
  const whole = stretches.flatMap(({ points, changed }) =>
    points.map(({ day, value, conditions }, index) => ({
      ...{ day, value, length: conditions.length, set: setName(conditions.set) },
      note: index === 0 ? changed.map((key) => conditionNames[key]).join(', ') : '',
    })),
  );
  const cutShort = interrupted.map((sheet) => ({ ...sheet, set: '', note: overTimeWords.interrupted }));
  return [...whole, ...cutShort]
    .toSorted((x, y) => (x.day < y.day ? 1 : x.day > y.day ? -1 : 0))
    .map(({ day, value, length, set, note }) => [
      shortDay(day),
      text(value),
      ...(isCount ? [`${length}`] : []),
      set,
      note,
    ]);
}

interface LegendProps {
  readonly mark: Mark;
  readonly levels: number;
  readonly trends: number;
  readonly breaks: number;
  readonly interrupted: number;
}

function Legend({ mark, levels, trends, breaks, interrupted }: LegendProps) {
  const isWith = mark === 'dot' || mark === 'square';
  const parts: ComponentChildren[] = [
    <span key="mark">
      <Sample of={mark} /> {isWith ? overTimeWords.withMark : overTimeWords.withoutMark}
    </span>,
    interrupted > 0 && (
      <span key="interrupted">
        <Sample of="cross" /> {overTimeWords.interruptedNote}
      </span>
    ),
    levels > 0 && (
      <span key="level">
        <Sample of="level" /> {overTimeWords.limitNote}
      </span>
    ),
    trends > 0 && (
      <span key="trend">
        <Sample of="trend" /> {overTimeWords.lineNote}
      </span>
    ),
    breaks > 0 && <span key="break">{overTimeWords.breakNote}</span>,
  ];
  return <>{parts}</>;
}
