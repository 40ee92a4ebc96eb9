import { extent } from 'd3-array';
import { type ScaleLinear, type ScaleTime, scaleLinear, scaleUtc } from 'd3-scale';
import { format } from 'date-fns';
import type { Day } from '../../core/record/stamp';

/** Room around the plot, in px: for the numbers at the left, the days below, and names of lines at the right. */
export const room = { left: 44, right: 12, names: 56, top: 12, bottom: 28 } as const;

/** A local day as the instant it stands for on a scale: noon, so that no zone moves it. */
export function noonOf(day: Day): Date {
  return new Date(`${day}T12:00:00Z`);
}

/** Days across a chart, up to so many px from its left edge, with some to spare at both ends. */
export function dayScale(days: readonly Day[], rightEdge: number): ScaleTime<number, number> {
  const [first, last] = extent(days);
  const from = noonOf(first ?? '2000-01-01').getTime();
  const to = noonOf(last ?? first ?? '2000-01-01').getTime();
  const spare = Math.max(86_400_000, (to - from) / 40);
  return scaleUtc()
    .domain([from - spare, to + spare])
    .range([room.left, rightEdge]);
}

/** Values from 0 up a chart so many px high. */
export function valueScale(top: number, height: number): ScaleLinear<number, number> {
  return scaleLinear()
    .domain([0, top <= 0 ? 1 : top])
    .nice(5)
    .range([height - room.bottom, room.top]);
}

const nameWidth = 52;

/** The days named below a chart: as many as have room. */
export function dayTicks(scale: ScaleTime<number, number>, width: number) {
  for (let many = Math.floor(width / nameWidth); many > 1; many -= 1) {
    const ticks = scale.ticks(many);
    const gaps = ticks.slice(1).map((at, index) => scale(at) - scale(ticks[index] ?? at));
    if (ticks.length > 1 && gaps.every((gap) => gap >= nameWidth))
      return ticks.map((at) => tickAt(scale, at));
  }
  return scale
    .ticks(1)
    .slice(0, 1)
    .map((at) => tickAt(scale, at));
}

/** The ticks are midnights in UTC; the name must be of that day in any zone. */
function tickAt(scale: ScaleTime<number, number>, at: Date) {
  return {
    x: scale(at),
    text: format(new Date(at.getUTCFullYear(), at.getUTCMonth(), at.getUTCDate()), 'd MMM'),
  };
}
