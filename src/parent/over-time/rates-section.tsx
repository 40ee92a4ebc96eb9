import type { Id } from '../../core/record/stamp';
import type { RateOverTime } from '../../readings/over-time/read-rates';
import { publishedRanges } from '../../readings/rates/published-ranges';
import { isFlat, type Stretch } from '../../readings/rates/trend';
import { sentenceOfTrend } from '../../readings/sentences/of-time';
import type { OverTimeSentence } from '../../readings/sentences/sentence';
import { StretchChart } from './stretch-chart';
import { TrendSaid } from './trend-said';
import { overTimeWords, rangeRow } from './words';

export interface RatesSectionProps {
  readonly rates: readonly RateOverTime[];
  /** Keeps what lies within the span the page shows. */
  readonly shown: (stretches: readonly Stretch[]) => readonly Stretch[];
  readonly setName: (set: Id | null) => string;
  readonly who: string;
}

const titles = {
  facts: { with: overTimeWords.factsWith, without: overTimeWords.factsWithout },
  digits: { with: overTimeWords.digitsWith, without: overTimeWords.digitsWithout },
} as const;

/** Facts and digits a minute, and what published ranges are and are not. */
export function RatesSection({ rates, shown, setName, who }: RatesSectionProps) {
  return (
    <section>
      <h2>{overTimeWords.rates}</h2>
      <div class="charts">
        {rates.map(({ rate, withClock, stretches }) => {
          if (rate === 'count' || stretches.length === 0) return null;
          const sentence = sentenceOfTrend(rate, withClock, stretches);
          const isAlike = rate === 'digits' && saysTheSame(sentence, factsTrend(rates, withClock));
          return (
            <div key={`${rate} ${withClock}`}>
              {isAlike ? (
                <p class="hint">{overTimeWords.alike}</p>
              ) : (
                <TrendSaid of={rate} withClock={withClock} stretches={stretches} who={who} />
              )}
              <StretchChart
                title={titles[rate][withClock ? 'with' : 'without']}
                stretches={shown(stretches)}
                mark={withClock ? 'dot' : 'diamond'}
                setName={setName}
              />
            </div>
          );
        })}
      </div>
      <PublishedRanges />
    </section>
  );
}

function factsTrend(rates: readonly RateOverTime[], withClock: boolean): OverTimeSentence | null {
  const own = rates.find((one) => one.rate === 'facts' && one.withClock === withClock);
  return own ? sentenceOfTrend('facts', withClock, own.stretches) : null;
}

/** Whether two trends are neither rising nor falling, or too short, alike. */
function saysTheSame(one: OverTimeSentence | null, other: OverTimeSentence | null): boolean {
  if (one?.kind === 'noTrend' && other?.kind === 'noTrend')
    return one.why === other.why && one.sheets === other.sheets;
  return one?.kind === 'trend' && other?.kind === 'trend' && isFlat(one.interval) && isFlat(other.interval);
}

function PublishedRanges() {
  return (
    <details>
      <summary>{overTimeWords.published}</summary>
      <p>{overTimeWords.publishedLead}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard */}
      <section class="table-frame" tabIndex={0} aria-label={overTimeWords.published}>
        <table class="plain">
          <thead>
            <tr>
              {overTimeWords.publishedColumns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {publishedRanges.map(rangeRow).map((cells) => (
              <tr key={cells.join()}>
                {cells.map((cell) => (
                  <td key={cell}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
