import type { RuledSat } from '../household/history';
import { activeTimes } from '../marking/active-time';
import { cardTime } from '../round/fit-round';
import { isDeciding } from '../sitting/turn';
import type { DaySource } from './day-source';
import type { Step, Waiting } from './step';

/** The day's time at the cards, in ms. What lies between two sittings counts for nothing. */
export interface DayTime {
  readonly leftMs: number;
  /** What a card takes this child. */
  readonly cardMs: number;
}

/** Steps as far as there is time for them, and what of them waits. */
export interface Planned {
  readonly steps: readonly Step[];
  readonly waits: readonly Waiting[];
}

/** Nothing to do. */
export const nothing: Planned = { steps: [], waits: [] };

/** What is left of the day's minutes after what was sat; a voided sitting was not the child's. */
export function timeOf({ settings, summary, sittings, today }: DaySource): DayTime {
  const cardMs = cardTime(summary.cardMs);
  const spentMs = sittings
    .filter(({ sat, rulings }) => sat.day === today && !rulings.voided)
    .reduce((sum, { sat }) => sum + spentOn(sat, cardMs), 0);
  return { leftMs: settings.minutes * 60_000 - spentMs, cardMs };
}

/** Without times a sitting took what its cards usually take. */
function spentOn(sat: RuledSat['sat'], cardMs: number): number {
  return activeTimes(sat).at(-1) ?? sat.visits.filter(isDeciding).length * cardMs;
}

/** A sheet or row once begun is sat to its end, so it gets a quarter more than it should take (our own decision). */
export function fullTime(cards: number, cardMs: number): number {
  return cards * cardMs * 1.25;
}

/** How many facts of a sheet there is time for: a multiple of five, 5 at least. */
export function fittingLength(length: number, { leftMs, cardMs }: DayTime): number {
  const fives = Math.floor(leftMs / fullTime(5, cardMs));
  return Math.min(length, Math.max(5, fives * 5));
}
