import type { ClockEffect } from '../../readings/clock-effect/clock-effect';
import { sentencesOfClock } from '../../readings/sentences/of-time';
import { say } from '../../readings/sentences/say';
import { Figure } from '../chart/figure';
import { RatioChart } from '../chart/ratio-chart';
import { Said } from '../parts/said';
import { overTimeWords } from './words';

/** How days with the clock differ from days without; only days drawn by lot could say why. */
export function ClockSection({ effect, who }: { readonly effect: ClockEffect; readonly who: string }) {
  const { ratio, interval, claim } = effect.time;
  const { ratioRows } = overTimeWords;
  const text = (value: number | undefined) => (value === undefined ? '–' : value.toFixed(2));
  return (
    <section>
      <h2>{overTimeWords.clock}</h2>
      {sentencesOfClock(effect).map((sentence) => (
        <Said key={sentence.kind} {...say(sentence, who)} />
      ))}
      {/* Without a claim a bar beside “same” would say more than the sentence does. */}
      {claim && ratio !== null && interval !== null && (
        <Figure
          title={overTimeWords.clockTitle}
          table={() => ({
            columns: overTimeWords.ratioColumns,
            rows: [
              [ratioRows.middle, text(ratio)],
              [ratioRows.low, text(interval.low)],
              [ratioRows.high, text(interval.high)],
            ],
          })}
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
