/** Tries of two kinds at one thing, and how many of each kind failed. */
export interface TwoKinds {
  readonly failedOne: number;
  readonly ofOne: number;
  readonly failedOther: number;
  readonly ofOther: number;
}

/**
 * How likely so many failures, or more, would be of kind one if failures fell blindly on the tries of each thing: the
 * exact test of several 2 × 2 tables together (Birch 1964; Fisher's for one). 1 where nothing can differ.
 */
export function moreByChance(tables: readonly TwoKinds[]): number {
  let chances = new Float64Array([1]);
  let seen = 0;
  for (const table of tables) {
    const own = blindly(table);
    seen += table.failedOne;
    const sums = new Float64Array(chances.length + own.length - 1);
    chances.forEach((chance, at) => {
      for (const [more, share] of own.entries()) sums[at + more] = (sums[at + more] ?? 0) + chance * share;
    });
    chances = sums;
  }
  return Math.min(
    1,
    chances.slice(seen).reduce((sum, chance) => sum + chance, 0),
  );
}

/** The chance of each count of failures of kind one, from 0, given all failures of the table (hypergeometric). */
function blindly({ failedOne, ofOne, failedOther, ofOther }: TwoKinds): readonly number[] {
  const failed = failedOne + failedOther;
  const ways = Array.from(
    { length: Math.min(failed, ofOne) + 1 },
    (_, one) => chosen(one, ofOne) * chosen(failed - one, ofOther),
  );
  const all = ways.reduce((sum, count) => sum + count, 0);
  return ways.map((count) => count / all);
}

function chosen(count: number, of: number): number {
  if (count < 0 || count > of) return 0;
  let ways = 1;
  for (let at = 1; at <= count; at += 1) ways = (ways * (of - count + at)) / at;
  return ways;
}
