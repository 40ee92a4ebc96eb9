import { normalTail } from './normal-tail';
import { midRanks } from './ranks';
import { chanceUpTo, signedRankNull } from './signed-rank-null';

/** A signed-rank test. `v` is the sum of the ranks of the differences over 0; p-values are shares 0 to 1. */
export interface SignedRank {
  /** Differences used: those that are 0 say nothing and are left out (Wilcoxon 1945). */
  readonly pairs: number;
  readonly v: number;
  readonly pGreater: number;
  readonly pLess: number;
  readonly pTwoSided: number;
  readonly exact: boolean;
}

/** Up to here the null is worked out whole; beyond it the normal curve is as good to three digits. */
const mostExact = 150;

/** Wilcoxon's signed-rank test on paired differences, exact with ties too (Hollander & Wolfe 1973). */
export function signedRank(differences: readonly number[]): SignedRank {
  const used = differences.filter((difference) => difference !== 0);
  const ranks = midRanks(used.map(Math.abs));
  const v = ranks.reduce((sum, rank, index) => sum + ((used[index] ?? 0) > 0 ? rank : 0), 0);
  const total = (used.length * (used.length + 1)) / 2;
  const exact = used.length <= mostExact;
  const upTo = exact ? exactly(ranks) : nearly(ranks);
  const pLess = upTo(v);
  const pGreater = upTo(total - v);
  return {
    pairs: used.length,
    v,
    pGreater,
    pLess,
    pTwoSided: Math.min(1, 2 * Math.min(pLess, pGreater)),
    exact,
  };
}

function exactly(ranks: readonly number[]): (sum: number) => number {
  const chance = signedRankNull(ranks);
  return (sum) => chanceUpTo(sum, chance);
}

function nearly(ranks: readonly number[]): (sum: number) => number {
  const middle = ranks.reduce((sum, rank) => sum + rank, 0) / 2;
  const spread = Math.sqrt(ranks.reduce((sum, rank) => sum + rank * rank, 0)) / 2;
  return (sum) => normalTail((middle - sum - 0.5) / spread);
}
