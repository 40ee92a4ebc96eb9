import { normalTail } from './normal-tail';
import { midRanks } from './ranks';

/** Values of one occasion: some, and the others they are ranked among. */
export interface Occasion {
  readonly some: readonly number[];
  readonly others: readonly number[];
}

/**
 * How likely values drawn blindly within each occasion would rank so low, or lower, over all occasions together
 * (rank sums by occasion, van Elteren 1960, by the normal curve). 1 where nothing can be ranked.
 */
export function lowerOverOccasions(occasions: readonly Occasion[]): number {
  let [apart, variance] = [0, 0];
  for (const { some, others } of occasions) {
    if (some.length === 0 || others.length === 0) continue;
    const count = some.length + others.length;
    const ranks = midRanks([...some, ...others]);
    const middle = (count + 1) / 2;
    const squares = ranks.reduce((sum, rank) => sum + (rank - middle) ** 2, 0);
    const seen = ranks.slice(0, some.length).reduce((sum, rank) => sum + rank, 0);
    // A rank is a smaller step on a longer occasion: each is weighed by its length (van Elteren's weights).
    apart += (seen - some.length * middle) / (count + 1);
    variance += (some.length * others.length * squares) / (count * (count - 1)) / (count + 1) ** 2;
  }
  return variance === 0 ? 1 : normalTail(-apart / Math.sqrt(variance));
}
