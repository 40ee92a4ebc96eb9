import { wilsonInterval } from '../../../src/readings/statistics/wilson';
import { type CellName, cells } from './cells';
import { type FactCell, factStatesOf, verdictNames, verdictsOf } from './evaluate';
import type { DayOrder } from './run';

/** Seeds from one on, each run one. Reports are made from these alone, and nothing was ever tuned on them. */
const reportingSeeds = (runs: number): readonly number[] =>
  Array.from({ length: runs }, (_, at) => 770_000_000 + at);

/** A share in a hundred with its Wilson interval. */
function share(count: number, of: number): string {
  const { low, high } = wilsonInterval(count, of);
  const percent = (value: number) => (value * 100).toFixed(1);
  return `${percent(count / of)} (${percent(low)}–${percent(high)})`;
}

/** How often each kind of child was called flustered, and how often each verdict was given of the last timed sheet. */
export function* verdictLines(runs: number, order: DayOrder, only: readonly CellName[]): Generator<string> {
  yield `| child, days ${order} | called flustered, % of runs (95 %) | ${verdictNames.join(' | ')} |`;
  yield `|---|---|${verdictNames.map(() => '---').join('|')}|`;
  for (const cell of only) {
    const { ever, last } = verdictsOf(cells[cell], reportingSeeds(runs), order);
    const each = verdictNames.map((name) => `${((100 * (last.get(name) ?? 0)) / runs).toFixed(1)}`);
    yield `| ${cell} | ${share(ever.get('flustered') ?? 0, runs)} | ${each.join(' | ')} |`;
  }
}

const factCells: readonly FactCell[] = (['one', 'all'] as const).flatMap((which) =>
  (
    [
      [0.3, 60],
      [0.5, 60],
      [0.6, 60],
      [0.7, 60],
      [0.5, 4],
      [0.97, 60],
    ] as const
  ).map(([right, exposures]) => ({ right, exposures, which })),
);

/** How often facts of one strength were called what at the end of a run, and quick after any sheet of it. */
export function* factLines(runs: number): Generator<string> {
  const states = ['quick', 'slow', 'uneven', 'toLearn', 'notEnough'] as const;
  yield `| facts of the set | chance right | met before | facts | quick at the end, % (95 %) | quick at any time, % (95 %) | ${states.slice(1).join(' | ')} |`;
  yield `|---|---|---|---|---|---|${states
    .slice(1)
    .map(() => '---')
    .join('|')}|`;
  for (const cell of factCells) {
    const { facts, atEnd, everQuick } = factStatesOf(
      cell,
      reportingSeeds(cell.which === 'one' ? runs : runs / 10),
    );
    const rest = states.slice(1).map((state) => ((100 * (atEnd.get(state) ?? 0)) / facts).toFixed(1));
    yield `| ${cell.which} | ${cell.right} | ${cell.exposures} | ${facts} | ${share(atEnd.get('quick') ?? 0, facts)} | ${share(everQuick, facts)} | ${rest.join(' | ')} |`;
  }
}
