import { median } from '../marking/median';
import { newFactBounds } from './how-many-new';
import { countCards } from './rehearse';

/** Known facts around a new one: seven to nine in the studies (Burns et al. 2019); fewer where time is short. */
export const depthBounds = { least: 1, short: 3, most: 9 } as const;

/** What a card takes where nothing is known of the child, and the bounds of what is believed (our own decision). */
const usualCardMs = { unknown: 5000, least: 1500, most: 15_000 } as const;

/** What looking at a new fact and its strategy takes besides (our own decision). */
const newFactMs = 10_000;

/** What a card takes this child, in ms: the median of the medians of its sheets without the clock. */
export function cardTime(mediansMs: readonly number[]): number {
  const own = median(mediansMs) ?? usualCardMs.unknown;
  return Math.min(usualCardMs.most, Math.max(usualCardMs.least, own));
}

/** How long a round takes, in ms. */
export function roundTime(fresh: number, known: number, depth: number, cardMs: number): number {
  return countCards(fresh, known, depth) * cardMs + fresh * newFactMs;
}

/** How large a round is: `fresh` new facts, each among at most `depth` known ones. */
export interface RoundSize {
  readonly fresh: number;
  readonly depth: number;
}

export interface RoundRoom {
  readonly fresh: number;
  readonly known: number;
  readonly budgetMs: number;
  readonly mostCards: number;
  readonly cardMs: number;
}

/**
 * The largest round that fits its time and its cards; `null` where not even one new fact does. A number of new facts
 * that suits the child is worth more than the full nine known ones, so these give way first, to three; then the new
 * facts, to two; then the rest of both (our own decision).
 */
export function fitRound({ fresh, known, budgetMs, mostCards, cardMs }: RoundRoom): RoundSize | null {
  const few = Math.min(fresh, newFactBounds.least);
  const { least, short, most } = depthBounds;
  const sizes = [
    ...downTo(most, short).map((depth) => ({ fresh, depth })),
    ...downTo(fresh, few).map((count) => ({ fresh: count, depth: short })),
    ...downTo(short, least).map((depth) => ({ fresh: few, depth })),
    { fresh: Math.min(fresh, 1), depth: least },
  ];
  const fits = (size: RoundSize) =>
    countCards(size.fresh, known, size.depth) <= mostCards &&
    roundTime(size.fresh, known, size.depth, cardMs) <= budgetMs;
  return fresh > 0 ? (sizes.find(fits) ?? null) : null;
}

function downTo(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, from - to + 1) }, (_, step) => from - step);
}
