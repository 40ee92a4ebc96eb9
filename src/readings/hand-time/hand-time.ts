import { quantile } from 'simple-statistics';
import type { Sat, Via, Visit } from '../../core/record/sat';
import type { Id } from '../../core/record/stamp';
import { groupBy } from '../group-by';
import { median } from '../statistics/robust-spread';
import { type Copy, copiesOf } from './copies';
import { forDigitGaps } from './digit-gaps';

/** How fast one child's hands copy a number on one device in one way. Medians in ms, `null` where never seen. */
export interface HandTime {
  readonly device: Id;
  readonly via: Via;
  readonly copies: number;
  /** How many copies of one digit, of two, of three there are. */
  readonly byDigits: ReadonlyMap<number, number>;
  /** Ten copies each of one and of two digits: fewer say little. */
  readonly isEnough: boolean;
  readonly firstKeyMs: number;
  readonly gapMs: number | null;
  /** Nine gaps in ten are no longer than this: a longer one within an answer is a pause. */
  readonly pauseMs: number | null;
  readonly doneMs: number | null;
  readonly turnMs: number | null;
}

/** How many copies of a digit count are asked for. */
const copiesAsked = 10;

/** Hands grow faster: only so many of the newest copies are pooled (our own decision, no source). */
export const copiesPooled = 60;

/** One hand time for each device and way of entry among a child's sittings, which come oldest first. */
export function handTimes(sats: readonly Sat[]): readonly HandTime[] {
  return handTimesOf(sats.flatMap(copiesOf));
}

/** The same of numbers copied. */
export function handTimesOf(all: readonly Copy[]): readonly HandTime[] {
  const hands = groupBy(all, ({ device, via }) => `${device} ${via}`);
  return hands.flatMap((copies) => handTimeOf(copies.slice(-copiesPooled)) ?? []);
}

function handTimeOf(copies: readonly Copy[]): HandTime | null {
  const [first] = copies;
  const firstKeyMs = median(copies.map((copy) => copy.firstKeyMs));
  if (!first || firstKeyMs === null) return null;
  const gaps = copies.flatMap(({ gapsMs }) => gapsMs);
  const byDigits = new Map<number, number>();
  for (const { digits } of copies) byDigits.set(digits, (byDigits.get(digits) ?? 0) + 1);
  return {
    device: first.device,
    via: first.via,
    copies: copies.length,
    byDigits,
    isEnough: [1, 2].every((digits) => (byDigits.get(digits) ?? 0) >= copiesAsked),
    firstKeyMs,
    gapMs: median(gaps),
    pauseMs: gaps.length === 0 ? null : quantile(gaps, 0.9),
    doneMs: median(copies.flatMap(({ doneMs }) => doneMs ?? [])),
    turnMs: median(copies.flatMap(({ turnMs }) => turnMs ?? [])),
  };
}

/** Time to the first key of an answer less what the hands alone take, never under 0; ms. */
export function thinkMs(firstKeyMs: number, hand: HandTime): number {
  return Math.max(0, firstKeyMs - hand.firstKeyMs);
}

/** How many gaps there are between the digits of an answer. */
export function gapsInside(visit: Visit): number {
  let gaps = 0;
  forDigitGaps(visit, () => {
    gaps += 1;
  });
  return gaps;
}

/** How many gaps between the digits of an answer are longer than these hands ever need. */
export function pausesInside(visit: Visit, { pauseMs }: HandTime): number {
  let pauses = 0;
  if (pauseMs === null) return pauses;
  forDigitGaps(visit, (gapMs) => {
    if (gapMs > pauseMs) pauses += 1;
  });
  return pauses;
}
