import type { ClockEffect } from '../../readings/clock-effect/clock-effect';
import { Figure } from '../chart/figure';
import { RatioChart } from '../chart/ratio-chart';
import { Said } from '../parts/said';
import { saidOfClock } from '../reading/said-over-time';
import { overTimeWords } from './words';

/** How days with the clock differ from days without; only days drawn by lot could say why. */
export function ClockSection({ effect }: { readonly effect: ClockEffect }) {
  const { ratio, interval } = effect.time;
  const { ratioRows } = overTimeWords;
  const text = (value: number | undefined) => (value === undefined ? '–' : value.toFixed(2));
  return (
    <section>
      <h2>{overTimeWords.clock}</h2>
      {saidOfClock(effect).map((said) => (
        <Said key={said.text} {...said} />
      ))}
      {ratio !== null && interval !== null && (
        <Figure
          title={overTimeWords.clockTitle}
          table={{
            columns: overTimeWords.ratioColumns,
            rows: [
              [ratioRows.middle, text(ratio)],
              [ratioRows.low, text(interval.low)],
              [ratioRows.high, text(interval.high)],
            ],
          }}
        >
          <RatioChart
            says={overTimeWords.ratioSays(text(ratio), text(interval.low), text(interval.high))}
            ratio={ratio}
            interval={interval}
            shorter={overTimeWords.shorter}
            same={overTimeWords.same}
            longer={overTimeWords.longer}
          />
        </Figure>
      )}
    </section>
  );
}
