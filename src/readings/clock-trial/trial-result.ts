import { mean } from 'simple-statistics';
import type { FactId } from '../../core/fact/fact';
import type { DayKind, Order } from './orders';

/** One answer on a day of a trial; the time to the first key in ms, over 0, or `null` where not kept. */
export interface TrialAnswer {
  readonly fact: FactId;
  readonly firstKeyMs: number | null;
  readonly right: boolean;
}

/** A day of a trial as it was sat; `as` is what it really was, whatever had been drawn. */
export interface TrialDay {
  readonly as: DayKind;
  readonly answers: readonly TrialAnswer[];
}

interface Share {
  readonly right: number;
  readonly of: number;
}

/** What a trial shows. Ratios over 1 are longer times with the thread; accuracy is described, never tested. */
export interface TrialReading {
  readonly days: number;
  /** Days that were not sat as drawn; they stay with what was drawn. */
  readonly otherwise: number;
  /** Facts with a time on days of both kinds. */
  readonly facts: number;
  readonly ratio: number | null;
  readonly accuracy: Readonly<Record<DayKind, Share>>;
  /** Only a trial sat to its end is tested. */
  readonly test: { readonly pTwoSided: number; readonly orders: number } | null;
}

/**
 * The primary measure, declared beforehand: the mean over facts common to both kinds of days of the difference of
 * mean log times, two-sided, over exactly the list the order was drawn from (a randomisation test).
 * `days` are the days sat, in turn; a trial stopped early is only described.
 */
export function trialReading(
  orders: readonly Order[],
  drawn: Order,
  days: readonly TrialDay[],
): TrialReading {
  const sat = days.slice(0, drawn.length);
  const logs = sat.map(({ answers }) => logsByFact(answers));
  const seen = differenceUnder(drawn, logs);
  const isWhole = sat.length === drawn.length && seen !== null;
  return {
    days: sat.length,
    otherwise: sat.filter((day, index) => day.as !== drawn[index]).length,
    facts: seen?.facts ?? 0,
    ratio: seen === null ? null : Math.exp(seen.difference),
    accuracy: { thread: shareOn('thread', drawn, sat), noClock: shareOn('noClock', drawn, sat) },
    test: isWhole ? { pTwoSided: pOver(orders, logs, seen.difference), orders: orders.length } : null,
  };
}

type DayLogs = ReadonlyMap<FactId, readonly number[]>;

function logsByFact(answers: readonly TrialAnswer[]): DayLogs {
  const logs = new Map<FactId, number[]>();
  for (const { fact, firstKeyMs } of answers) {
    if (firstKeyMs !== null) logs.set(fact, [...(logs.get(fact) ?? []), Math.log(firstKeyMs)]);
  }
  return logs;
}

/** The measure if the days had been drawn in this order; `null` without a fact common to both kinds. */
function differenceUnder(
  order: Order,
  days: readonly DayLogs[],
): { readonly difference: number; readonly facts: number } | null {
  const on = (kind: DayKind, fact: FactId) =>
    days.flatMap((day, index) => (order[index] === kind ? (day.get(fact) ?? []) : []));
  const facts = new Set(days.flatMap((day) => [...day.keys()]));
  const differences = [...facts].flatMap((fact) => {
    const [thread, noClock] = [on('thread', fact), on('noClock', fact)];
    return thread.length === 0 || noClock.length === 0 ? [] : [mean(thread) - mean(noClock)];
  });
  return differences.length === 0 ? null : { difference: mean(differences), facts: differences.length };
}

function pOver(orders: readonly Order[], days: readonly DayLogs[], seen: number): number {
  // An order with no common fact can't speak against chance, so it counts as reaching what was seen.
  const sizes = orders.map((order) =>
    Math.abs(differenceUnder(order, days)?.difference ?? Number.POSITIVE_INFINITY),
  );
  return sizes.filter((size) => size >= Math.abs(seen) - 1e-9).length / orders.length;
}

function shareOn(kind: DayKind, order: Order, days: readonly TrialDay[]): Share {
  const answers = days.flatMap((day, index) => (order[index] === kind ? day.answers : []));
  return { right: answers.filter(({ right }) => right).length, of: answers.length };
}
