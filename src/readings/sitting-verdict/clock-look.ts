import { mean } from 'simple-statistics';
import { windowDays } from '../clock-effect/clock-effect';
import type { Meeting } from '../clock-effect/meeting';
import type { DayLines, DayPair } from '../clock-effect/pair-days';
import { groupBy } from '../group-by';
import { median } from '../statistics/robust-spread';
import { signedRank } from '../statistics/signed-rank';
import { moreByChance } from '../statistics/stratified-counts';
import type { Flustered } from './verdict';

/** Facts and days that are fewer can't be beyond chance (trade rule: no claim below six). */
const fewest = 6;

/**
 * Answers of one day share its mood, so the days are asked besides the facts, one-sided. Right and wrong of a day are
 * few, and say less of it than its times.
 */
const dayAlpha = { times: 0.025, rights: 0.05 } as const;

/** How the two tests share the chance of error: right and wrong say less in so few answers, and get more of it. */
const shares = { times: 0.35, rights: 0.65 } as const;

/** From so many days between the two kinds on, practice alone could be what is seen, as in the clock effect. */
const practiceDays = 3;

/**
 * One look at the same facts on days with the clock and days without: slower, less often right, or neither. Two
 * tests share `alpha`; `lines` hold the meetings by their days. Who is called flustered is settled here and nowhere else.
 */
export function lookAtClock(lines: DayLines, meetings: readonly Meeting[], alpha: number): Flustered | null {
  const pairs = lines.pairs(windowDays);
  const days = new Set(pairs.map(({ withClock }) => withClock.day));
  const facts = new Set(pairs.map(({ withClock }) => withClock.fact));
  if (facts.size < fewest || days.size < fewest) return null;
  const gaps = pairs.map(({ withClock, without }) => withClock.dayCount - without.dayCount);
  if (mean(gaps) < -practiceDays) return null;
  const ratio = slowerBy(pairs, alpha * shares.times);
  const isLessRight = lessRight(pairs, meetings, alpha * shares.rights);
  if (ratio === null && !isLessRight) return null;
  const { right, of } = countBy(pairs, meetings);
  return {
    name: 'flustered',
    by: ratio === null ? 'lessRight' : isLessRight ? 'both' : 'slower',
    ratio,
    rightWith: right.with,
    ofWith: of.with,
    rightWithout: right.without,
    ofWithout: of.without,
    days: days.size,
    facts: facts.size,
  };
}

/** How many times as long, where that is beyond chance over the facts and over the days; else `null`. */
function slowerBy(pairs: readonly DayPair[], alpha: number): number | null {
  const shifts = pairs.flatMap(({ withClock, without }) =>
    withClock.logMs === null || without.logMs === null
      ? []
      : [{ fact: withClock.fact, day: withClock.day, shift: withClock.logMs - without.logMs }],
  );
  const byFact = groupBy(shifts, ({ fact }) => fact).map((own) => median(own.map(({ shift }) => shift)) ?? 0);
  const byDay = groupBy(shifts, ({ day }) => day).map((own) => mean(own.map(({ shift }) => shift)));
  if (byFact.length < fewest || byDay.length < fewest) return null;
  const isBeyond = signedRank(byFact).pGreater <= alpha && signedRank(byDay).pGreater <= dayAlpha.times;
  return isBeyond ? Math.exp(median(byFact) ?? 0) : null;
}

/** Less often right, beyond chance over every answer of the days set side by side, and over the days. */
function lessRight(pairs: readonly DayPair[], meetings: readonly Meeting[], alpha: number): boolean {
  const losses = pairs.flatMap(({ withClock, without }) =>
    withClock.share === null || without.share === null
      ? []
      : [{ day: withClock.day, loss: without.share - withClock.share }],
  );
  const byDay = groupBy(losses, ({ day }) => day).map((own) => mean(own.map(({ loss }) => loss)));
  if (byDay.length < fewest || signedRank(byDay).pGreater > dayAlpha.rights) return false;
  const tables = groupBy(judged(pairs, meetings), ({ fact }) => fact).map((own) => {
    const [one, other] = [
      own.filter(({ withClock }) => withClock),
      own.filter(({ withClock }) => !withClock),
    ];
    return {
      failedOne: one.length - rightOf(one),
      ofOne: one.length,
      failedOther: other.length - rightOf(other),
      ofOther: other.length,
    };
  });
  return moreByChance(tables) <= alpha;
}

function countBy(pairs: readonly DayPair[], meetings: readonly Meeting[]) {
  const all = judged(pairs, meetings);
  const [one, other] = [all.filter(({ withClock }) => withClock), all.filter(({ withClock }) => !withClock)];
  return {
    right: { with: rightOf(one), without: rightOf(other) },
    of: { with: one.length, without: other.length },
  };
}

/** Meetings of the days set side by side that were right or wrong. */
function judged(pairs: readonly DayPair[], meetings: readonly Meeting[]): readonly Meeting[] {
  const paired = new Set(pairs.flatMap(({ withClock, without }) => [keyOf(withClock), keyOf(without)]));
  return meetings.filter((meeting) => meeting.right !== null && paired.has(keyOf(meeting)));
}

function rightOf(meetings: readonly Meeting[]): number {
  return meetings.filter(({ right }) => right).length;
}

function keyOf({ fact, day, withClock }: Pick<Meeting, 'fact' | 'day' | 'withClock'>): string {
  return `${fact} ${day} ${withClock}`;
}
