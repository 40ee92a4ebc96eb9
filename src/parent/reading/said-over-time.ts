import type { ChildLog } from '../../readings/child-log/child-log';
import type { ClockEffect } from '../../readings/clock-effect/clock-effect';
import type { ReadTrial } from '../../readings/clock-trial/read-trial';
import type { Lift } from '../../readings/errors/lift';
import type { Stretch } from '../../readings/rates/trend';
import type { SaidText } from './said-text';
import { say } from './say';

export function saidOfLift(what: string, { hits, of, expected, pMore }: Lift): SaidText {
  return say({ kind: 'errorLift', what, hits, of, expected, pMore });
}
export function saidOfClock(effect: ClockEffect): readonly SaidText[] {
  const { time, accuracy, facts, daysWith, daysWithout } = effect;
  if (!time.claim && !accuracy.claim)
    return [
      say({
        kind: 'clockNoClaim',
        time: time.noClaim ?? 'tooFewFacts',
        accuracy: accuracy.noClaim ?? 'tooFewFacts',
        facts,
        daysWith,
        daysWithout,
      }),
    ];
  return [
    ...(time.claim
      ? [
          say({
            kind: 'clockTimes',
            claim: time.claim,
            ratio: time.ratio ?? 1,
            interval: time.interval,
            facts: time.facts,
            days: time.byDay.days,
          }),
        ]
      : []),
  ];
}
export function saidOfTrend(
  of: 'facts' | 'digits' | 'think',
  _withClock: boolean,
  stretches: readonly Stretch[],
): readonly SaidText[] {
  const last = stretches.at(-1);
  if (!last) return [];
  if (last.line)
    return [
      say({
        kind: 'trend',
        of,
        perWeek: last.line.perWeek,
        interval: last.line.interval,
        sittings: last.points.length,
      }),
    ];
  return [say({ kind: 'noTrend', of, why: last.noLine ?? 'tooFew' })];
}
export function saidOfHands(_log: ChildLog): readonly SaidText[] {
  return [];
}
export function saidOfTrial({ reading, days, left, isWhole }: ReadTrial): readonly SaidText[] {
  if (isWhole && reading.test && reading.ratio !== null)
    return [
      say({ kind: 'trialDone', ratio: reading.ratio, p: reading.test.pTwoSided, days, facts: reading.facts }),
    ];
  return [say({ kind: 'trialOpen', days, left })];
}
