import type { Answer } from '../child-log/answer';
import type { ReadSat } from '../child-log/child-log';
import { rapidGuessMs } from '../errors/read-error';
import { rushingOf } from '../errors/rushing';
import { binomialUpTo } from '../statistics/binomial';
import { median } from '../statistics/robust-spread';
import { signedRank } from '../statistics/signed-rank';
import {
  lowerOverOccasions,
  type Occasion,
  type RanksApart,
  ranksApart,
} from '../statistics/stratified-rank-sum';
import { nearDays } from './past';
import type { Sheet } from './sheet';
import type { Rushed } from './verdict';

/** Chances of error at which a sheet is called rushed, by itself, over the last ones like it, against the usual. */
const alpha = { sheet: 0.005, last: 0.0005, usual: 0.001, wronger: 0.01 } as const;

/** Wrong answers a sheet must have to be tested by itself, and to carry on what the last sheets showed. */
const fewestWrong = { alone: 4, among: 3, usual: 3 } as const;

/**
 * What a sheet must show by itself, whatever the last ones showed: its wrong answers' usual time at most this share of
 * its right ones', and by the exact rank test no likelier by chance than this (our own decision, no source). Two wrong
 * of 25 can come out at 1 in 300, three at 1 in 2,300.
 */
const shown = { share: 0.85, chance: 0.2 } as const;

/** A sheet much quicker than usual takes at most this share of the usual time. */
const muchQuicker = 0.7;

/** Answers begun unread that make a sheet rushed: a quarter, and three or more wrong. */
const unread = { share: 0.25, wrong: 3 } as const;

const known = new WeakMap<ReadSat, RanksApart | null>();

/** How one sheet's wrong answers rank among all its own; kept, since each sheet is looked back at up to eight times. */
function ranksOf(read: ReadSat): RanksApart | null {
  const before = known.get(read);
  if (before !== undefined) return before;
  const ranks = ranksApart(occasionOf(read));
  known.set(read, ranks);
  return ranks;
}

/** Wrong and right times of one sheet. */
function occasionOf({ answers }: ReadSat): Occasion {
  const [some, others]: [number[], number[]] = [[], []];
  for (const { right, firstKeyMs } of timesOf(answers)) (right ? others : some).push(firstKeyMs);
  return { some, others };
}

/** How likely wrong answers so quick are by chance over several sheets. */
export function wrongQuicker(sheets: readonly ReadSat[]): number {
  return lowerOverOccasions(sheets.map(ranksOf));
}

/** Whether a sheet was rushed; `last` are the sheets of the same kind shortly before it. */
export function rushed(sheet: Sheet, last: readonly ReadSat[]): Rushed | null {
  const found = begunUnread(sheet) ?? quickerThanUsual(sheet) ?? wrongCameQuicker(sheet, last);
  if (!found) return null;
  const slips = sheet.read.answers.filter(({ slip }) => slip === true).length;
  return { name: 'rushed', ...found, leftS: leftS(sheet), slips };
}

/** What was found, before what holds of every rushed sheet is added. */
type Found = Omit<Rushed, 'name' | 'leftS' | 'slips'>;

/** Of the allowance, s, once the last card was done; `null` where the bell came first. */
function leftS({ sat, read }: Sheet): number | null {
  const { places } = read.marked;
  if (!sat.clock || places.some(({ atMs }) => atMs === null)) return null;
  const left = sat.clock.allowanceMs - Math.max(...places.map(({ atMs }) => atMs ?? 0));
  return left > 0 ? left / 1000 : null;
}

function wrongCameQuicker({ read }: Sheet, last: readonly ReadSat[]): Found | null {
  if (read.marked.wrong < fewestWrong.among) return null;
  const own = occasionOf(read);
  const [wrongMs, rightMs] = [median(own.some), median(own.others)];
  if (wrongMs === null || rightMs === null || own.some.length < fewestWrong.among) return null;
  if (wrongMs > shown.share * rightMs) return null;
  const alone = rushingOf(timesOf(read.answers)).pQuicker;
  if (alone > shown.chance) return null;
  const isPlain = own.some.length >= fewestWrong.alone && alone <= alpha.sheet;
  const ranks = [...last, read].flatMap((one) => ranksOf(one) ?? []);
  const together = lowerOverOccasions(ranks);
  if (!isPlain && together > alpha.last) return null;
  return {
    by: 'wrongQuicker',
    wrong: own.some.length,
    of: own.some.length + own.others.length,
    quickS: wrongMs / 1000,
    otherS: rightMs / 1000,
    p: isPlain ? alone : together,
    sheets: isPlain ? 1 : ranks.length,
  };
}

function quickerThanUsual(sheet: Sheet): Found | null {
  if (sheet.read.marked.wrong < fewestWrong.usual) return null;
  const beside = sheet.read.answers.flatMap((answer) => besideUsual(answer, sheet));
  const wrong = beside.filter(({ answer }) => answer.outcome !== 'right').length;
  const ofBefore = beside.reduce((sum, { near }) => sum + near, 0);
  const wrongBefore = beside.reduce((sum, { nearWrong }) => sum + nearWrong, 0);
  const share = (wrongBefore + 1) / (ofBefore + 2);
  if (1 - binomialUpTo(wrong - 1, beside.length, share) > alpha.wronger) return null;
  const nowMs = beside.map(({ firstKeyMs }) => firstKeyMs);
  const usualMs = beside.map(({ timesMs }) => median(timesMs) ?? 0);
  const shifts = nowMs.map((ms, index) => Math.log(ms / (usualMs[index] ?? ms)));
  if ((median(shifts) ?? 0) > Math.log(muchQuicker)) return null;
  const p = signedRank(shifts).pLess;
  const [quickMs, otherMs] = [median(nowMs), median(usualMs)];
  if (p > alpha.usual || quickMs === null || otherMs === null) return null;
  return {
    by: 'quickerThanUsual',
    wrong,
    of: beside.length,
    quickS: quickMs / 1000,
    otherS: otherMs / 1000,
    p,
    sheets: 1,
  };
}

/** A timed answer beside the earlier ones to its fact: how many near enough, how many of them wrong, and their times. */
function besideUsual(answer: Answer, { past, day, sat }: Sheet) {
  const { fact, firstKeyMs, where, slip } = answer;
  if (firstKeyMs === null || slip === true) return [];
  const timesMs: number[] = [];
  let [near, nearWrong] = [0, 0];
  for (const one of past.of(fact.id).answers) {
    if (day - one.dayCount > nearDays || one.withClock !== (sat.clock !== null)) continue;
    near += 1;
    if (one.outcome !== 'right') nearWrong += 1;
    if (one.where === where && one.firstKeyMs !== null) timesMs.push(one.firstKeyMs);
  }
  return timesMs.length === 0 ? [] : [{ answer, firstKeyMs, near, nearWrong, timesMs }];
}

function begunUnread({ read }: Sheet): Found | null {
  if (read.marked.wrong < unread.wrong) return null;
  const given = timesOf(read.answers);
  const soon = given.filter(({ firstKeyMs }) => firstKeyMs < rapidGuessMs);
  const wrong = soon.filter(({ right }) => !right).length;
  if (wrong < unread.wrong || soon.length < unread.share * given.length) return null;
  const ms = (of: typeof given) => (median(of.map(({ firstKeyMs }) => firstKeyMs)) ?? 0) / 1000;
  const quickS = ms(soon);
  const otherS = ms(given.filter(({ firstKeyMs }) => firstKeyMs >= rapidGuessMs));
  return { by: 'unread', wrong, of: given.length, quickS, otherS, p: null, sheets: 1 };
}

/** Answers given in digits; what the parent calls a slip of the keys was no hurried thought. */
function timesOf(answers: readonly Answer[]) {
  return answers.flatMap(({ outcome, firstKeyMs, slip }) =>
    outcome === 'skipped' || firstKeyMs === null || slip === true
      ? []
      : [{ right: outcome === 'right', firstKeyMs }],
  );
}
