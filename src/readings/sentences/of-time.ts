import type { ClockEffect } from '../clock-effect/clock-effect';
import type { ReadTrial } from '../clock-trial/read-trial';
import type { Fairness } from '../hand-time/keypad-fairness';
import type { Readiness } from '../move-on/readiness';
import type { Stretch } from '../rates/trend';
import type { OverTimeSentence, TrendOf } from './sentence';

/** What else speaks about the clock: what days with it cost, a last sheet with it that was rushed, a trial that is on. */
export interface ClockStands {
  readonly costs: 'lessRight' | 'slower' | null;
  readonly isRushed: boolean;
  readonly isDrawn: boolean;
}

/** How the clock stands by what was read of it. */
export function clockStands(effect: ClockEffect, trial: ReadTrial | null, isRushed: boolean): ClockStands {
  return {
    costs: effect.accuracy.claim === 'worse' ? 'lessRight' : effect.time.claim === 'slower' ? 'slower' : null,
    isRushed,
    isDrawn: trial !== null && !trial.trial.isStopped && !trial.isWhole,
  };
}

/**
 * Whether to move on, else whether to turn the clock on or off. Moving on comes first: the next set begins without the
 * clock, so nothing is said of timing the one that is done. The clock is not proposed where it costs, where it was rushed
 * with, or where it is drawn.
 */
export function sentencesOfReadiness(readiness: Readiness, stands: ClockStands): readonly OverTimeSentence[] {
  const { isReady, quick, facts, lastRight, lastOf, lastDays, heldBack, isAccurate, clock } = readiness;
  const counted = { lastRight, lastOf };
  if (isReady) {
    const now = stands.isDrawn ? 'drawn' : clock === 'timeIt' ? 'off' : (stands.costs ?? 'on');
    const { unevenWithClock } = readiness;
    return [{ kind: 'ready', quick, facts, ...counted, lastDays, unevenWithClock, clock: now }];
  }
  const held = heldBack.map(({ fact }) => fact);
  const move: OverTimeSentence = { kind: 'notReady', quick, facts, heldBack: held, isAccurate };
  if (clock === 'fine' || stands.isDrawn) return [move];
  if (clock === 'timeIt' && (stands.costs !== null || stands.isRushed)) return [move];
  return [move, { kind: clock === 'timeIt' ? 'timeIt' : 'timedTooSoon', ...counted }];
}

/** Days with the clock beside days without; one sentence where nothing can be claimed. */
export function sentencesOfClock(effect: ClockEffect): readonly OverTimeSentence[] {
  const { time, accuracy, facts, daysWith, daysWithout } = effect;
  const said: OverTimeSentence[] = [];
  if (time.claim && time.ratio !== null) {
    const { claim, ratio, interval, byDay } = time;
    const rights = accuracy.claim;
    said.push({ kind: 'clockTimes', claim, ratio, interval, facts: time.facts, days: byDay.days, rights });
  }
  if (accuracy.claim) {
    const { claim, worse, better, same } = accuracy;
    const facts = worse + better + same;
    said.push({ kind: 'clockAccuracy', claim, worse, better, facts, time: time.claim });
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
  const sheets = last.points.length;
  const isFirst = stretches.length === 1;
  if (last.line === null)
    return {
      kind: 'noTrend',
      of,
      withClock,
      why: last.noLine ?? 'tooFew',
      sheets,
      isFirst,
    };
  const { perWeek, interval } = last.line;
  return { kind: 'trend', of, withClock, perWeek, interval, sheets, isFirst };
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
