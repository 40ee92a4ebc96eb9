import { normalTail } from './normal-tail';
import { midRanks } from './ranks';

/** Values of one occasion: some, and the others they are ranked among. */
export interface Occasion {
  readonly some: readonly number[];
  readonly others: readonly number[];
}

/** How far the ranks of an occasion's values lie from the middle, and the variance of that by chance. */
export interface RanksApart {
  readonly apart: number;
  readonly variance: number;
}

/** Ranks one occasion; `null` where nothing can be ranked. A rank is weighed by the occasion's length (van Elteren's weights). */
export function ranksApart({ some, others }: Occasion): RanksApart | null {
  if (some.length === 0 || others.length === 0) return null;
  const count = some.length + others.length;
  const ranks = midRanks([...some, ...others]);
  const middle = (count + 1) / 2;
  const squares = ranks.reduce((sum, rank) => sum + (rank - middle) ** 2, 0);
  const seen = ranks.slice(0, some.length).reduce((sum, rank) => sum + rank, 0);
  return {
    apart: (seen - some.length * middle) / (count + 1),
    variance: (some.length * others.length * squares) / (count * (count - 1)) / (count + 1) ** 2,
  };
}

/**
 * How likely values drawn blindly within each occasion would rank so low, or lower, over all occasions together
 * (rank sums by occasion, van Elteren 1960, by the normal curve). 1 where nothing can be ranked.
 */
export function lowerOverOccasions(occasions: readonly (RanksApart | null)[]): number {
  let [apart, variance] = [0, 0];
  for (const occasion of occasions) {
    apart += occasion?.apart ?? 0;
    variance += occasion?.variance ?? 0;
  }
  return variance === 0 ? 1 : normalTail(-apart / Math.sqrt(variance));
}
