import type { ClockEffect } from '../clock-effect/clock-effect';
import type { ReadTrial } from '../clock-trial/read-trial';
import type { Fairness } from '../hand-time/keypad-fairness';
import type { Readiness } from '../move-on/readiness';
import type { Stretch } from '../rates/trend';
import type { OverTimeSentence, TrendOf } from './sentence';

/** Whether to move on, and whether to turn the clock on. */
export function sentencesOfReadiness(readiness: Readiness): readonly OverTimeSentence[] {
  const { isReady, quick, facts, lastRight, lastOf, heldBack, isAccurate, clock } = readiness;
  const counted = { lastRight, lastOf };
  const move: OverTimeSentence = isReady
    ? { kind: 'ready', quick, facts, ...counted }
    : { kind: 'notReady', quick, facts, heldBack: heldBack.map(({ fact }) => fact), isAccurate };
  if (clock === 'fine') return [move];
  return [move, { kind: clock === 'timeIt' ? 'timeIt' : 'timedTooSoon', ...counted }];
}

/** Days with the clock beside days without; one sentence where nothing can be claimed. */
export function sentencesOfClock(effect: ClockEffect): readonly OverTimeSentence[] {
  const { time, accuracy, facts, daysWith, daysWithout } = effect;
  const said: OverTimeSentence[] = [];
  if (time.claim && time.ratio !== null) {
    const { claim, ratio, interval, byDay } = time;
    said.push({ kind: 'clockTimes', claim, ratio, interval, facts: time.facts, days: byDay.days });
  }
  if (accuracy.claim) {
    const { claim, worse, better, same } = accuracy;
    const isSooner = time.claim === 'faster';
    said.push({ kind: 'clockAccuracy', claim, worse, better, facts: worse + better + same, isSooner });
  }
  if (said.length > 0) return said;
  const none = 'notBeyondChance';
  return [
    {
      kind: 'clockNoClaim',
      time: time.noClaim ?? none,
      accuracy: accuracy.noClaim ?? none,
      facts,
      daysWith,
      daysWithout,
    },
  ];
}

/** How a clock trial stands, or what it found. */
export function sentenceOfTrial({ trial, reading, days, left }: ReadTrial): OverTimeSentence {
  const { test, ratio, facts } = reading;
  if (!test || ratio === null) return { kind: 'trialOpen', days, left, isStopped: trial.isStopped };
  return { kind: 'trialDone', ratio, p: test.pTwoSided, days, facts, orders: test.orders };
}

/** The trend of the newest stretch; `null` where nothing was sat. */
export function sentenceOfTrend(
  of: TrendOf,
  withClock: boolean,
  stretches: readonly Stretch[],
): OverTimeSentence | null {
  const last = stretches.at(-1);
  if (!last) return null;
  if (last.line === null) return { kind: 'noTrend', of, withClock, why: last.noLine ?? 'tooFew' };
  const { perWeek, interval } = last.line;
  return { kind: 'trend', of, withClock, perWeek, interval, sittings: last.points.length };
}

/** What the keys allow; `null` where every band is in reach, and `fairness` is `null` without a hand time. */
export function sentenceOfKeypad(fairness: Fairness | null, allowanceMs: number): OverTimeSentence | null {
  if (!fairness) return { kind: 'noHandTime' };
  const { mostAnswers, outOfReach, restoringS } = fairness;
  if (outOfReach.length === 0) return null;
  return {
    kind: 'keypad',
    mostAnswers,
    allowanceS: allowanceMs / 1000,
    bands: outOfReach.length,
    restoringS,
  };
}
