import { normalTail } from './normal-tail';
import { midRanks } from './ranks';

/** A rank-sum test. `w` is the sum of the ranks of the first group; p-values are shares 0 to 1. */
export interface RankSum {
  readonly w: number;
  /** How likely so small a sum is by chance: the first group's values lie lower. */
  readonly pLess: number;
  readonly pGreater: number;
  readonly pTwoSided: number;
  readonly exact: boolean;
}

/** Up to so many values in all the null is worked out whole; beyond it the normal curve is as good. */
const mostExact = 60;

/** Wilcoxon's rank-sum test of two groups, exact with ties too (Hollander & Wolfe 1973). */
export function rankSum(first: readonly number[], second: readonly number[]): RankSum {
  const ranks = midRanks([...first, ...second]);
  const w = ranks.slice(0, first.length).reduce((sum, rank) => sum + rank, 0);
  const exact = ranks.length <= mostExact;
  const { upTo, from } = exact ? exactly(ranks, first.length) : nearly(ranks, first.length);
  const pLess = upTo(w);
  const pGreater = from(w);
  return { w, pLess, pGreater, pTwoSided: Math.min(1, 2 * Math.min(pLess, pGreater)), exact };
}

interface Tails {
  readonly upTo: (w: number) => number;
  readonly from: (w: number) => number;
}

/** Every choice of so many ranks is as likely: counts the choices by size and by twice their sum. */
function exactly(ranks: readonly number[], size: number): Tails {
  const doubled = ranks.map((rank) => Math.round(rank * 2));
  const top = doubled.reduce((sum, rank) => sum + rank, 0);
  const ways = Array.from({ length: size + 1 }, () => new Float64Array(top + 1));
  if (ways[0]) ways[0][0] = 1;
  let reached = 0;
  for (const rank of doubled) {
    reached += rank;
    for (let chosen = size; chosen > 0; chosen -= 1) {
      const [here, fewer] = [ways[chosen], ways[chosen - 1]];
      if (!here || !fewer) continue;
      for (let sum = rank; sum <= reached; sum += 1) here[sum] = (here[sum] ?? 0) + (fewer[sum - rank] ?? 0);
    }
  }
  const all = ways[size] ?? Float64Array.of(1);
  const total = totalOf(all);
  const share = (counts: Float64Array) => totalOf(counts) / total;
  return {
    upTo: (w) => share(all.subarray(0, Math.round(w * 2) + 1)),
    from: (w) => share(all.subarray(Math.round(w * 2))),
  };
}

function totalOf(counts: Float64Array): number {
  let total = 0;
  for (const count of counts) total += count;
  return total;
}

function nearly(ranks: readonly number[], size: number): Tails {
  const count = ranks.length;
  const middle = (size * (count + 1)) / 2;
  const squares = ranks.reduce((sum, rank) => sum + (rank - (count + 1) / 2) ** 2, 0);
  const spread = Math.sqrt((squares * size * (count - size)) / (count * (count - 1)));
  if (spread === 0) return { upTo: () => 1, from: () => 1 };
  return {
    upTo: (w) => normalTail((middle - w - 0.5) / spread),
    from: (w) => normalTail((w - middle - 0.5) / spread),
  };
}
