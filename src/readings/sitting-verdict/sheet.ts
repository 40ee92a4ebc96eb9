import { type Band, bandOf } from '../../core/marking/band';
import type { Sat } from '../../core/record/sat';
import { type Answer, thinkOf } from '../child-log/answer';
import type { ChildLog, ReadSat } from '../child-log/child-log';
import { dayNumber } from '../day-number';
import { quickMs } from '../facts/pace';
import type { HandTime } from '../hand-time/hand-time';
import { median } from '../statistics/robust-spread';
import { type FactPast, isQuick, type Past } from './past';

/** An answer that cost the sheet something, with what is known of its fact from before. */
export interface Troubled {
  readonly answer: Answer;
  readonly past: FactPast;
  readonly missed: boolean;
}

/** A sheet as its causes are looked for: with what came before it, and nothing that came after. */
export interface Sheet {
  readonly log: ChildLog;
  readonly read: ReadSat;
  readonly sat: Sat;
  readonly past: Past;
  readonly day: number;
  /** Where the count by the bell falls, interrupted or not; `null` without a clock. */
  readonly band: Band | null;
  /** Whether the count asks for a reason: under the two top bands; without the clock under 9 right in 10. */
  readonly isShort: boolean;
  readonly hand: HandTime | null;
  /** Usual think time of the right answers, ms. */
  readonly thinkMs: number | null;
  /** Missed; and with the clock right but after more than about 3 s. */
  readonly troubled: () => readonly Troubled[];
}

/** Nine in ten, as in "accurate" (45 of 50). */
const fineShare = 0.9;

export function sheetOf(log: ChildLog, read: ReadSat, past: Past): Sheet {
  const { sat } = read.ruled;
  const { marked, answers } = read;
  const timed = sat.clock !== null;
  const band = timed ? bandOf(marked.rightByBell, marked.places.length, marked.limits) : null;
  const own = answers.filter(({ slip }) => slip !== true);
  const right = own.filter(({ outcome }) => outcome === 'right');
  const thinks = right.flatMap((answer) => thinkOf(answer) ?? []);
  return {
    log,
    read,
    sat,
    past,
    day: dayNumber(sat.day),
    band,
    isShort: timed ? band === 'loose' || band === 'thin' : right.length < fineShare * own.length,
    hand: handOf(log, sat, own),
    thinkMs: median(thinks),
    troubled: () => own.flatMap((answer) => troubledBy(answer, past, timed)),
  };
}

function troubledBy(answer: Answer, past: Past, timed: boolean): readonly Troubled[] {
  const missed = answer.outcome !== 'right';
  const isSlow = timed && isQuick(answer) === false;
  return missed || isSlow ? [{ answer, past: past.of(answer.fact.id), missed }] : [];
}

function handOf({ handsThen }: ChildLog, sat: Sat, answers: readonly Answer[]): HandTime | null {
  const via = answers[0]?.via;
  return via === undefined || via === 'paper' ? null : handsThen(sat.device, via, sat.day);
}

/** Whether half the right answers took longer than about 3 s of thinking. */
export function isSlowSheet({ thinkMs }: Sheet): boolean {
  return thinkMs !== null && thinkMs > quickMs;
}
