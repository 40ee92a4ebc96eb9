/**
 * Where the sum of the ranks with a plus sign falls when every sign is a fair coin: entry `i` is the chance
 * of a sum of `i / 2`. `ranks` are multiples of ½, so ties are met exactly. Hollander & Wolfe 1973.
 */
export function signedRankNull(ranks: readonly number[]): Float64Array {
  const top = Math.round(ranks.reduce((sum, rank) => sum + rank, 0) * 2);
  const chance = new Float64Array(top + 1);
  chance[0] = 1;
  let reached = 0;
  for (const rank of ranks) {
    const step = Math.round(rank * 2);
    reached += step;
    for (let at = reached; at >= step; at -= 1) {
      chance[at] = ((chance[at] ?? 0) + (chance[at - step] ?? 0)) / 2;
    }
    for (let at = step - 1; at >= 0; at -= 1) chance[at] = (chance[at] ?? 0) / 2;
  }
  return chance;
}

/** The chance of a sum of at most `sum` under such a null. */
export function chanceUpTo(sum: number, chance: Float64Array): number {
  let total = 0;
  for (let at = 0; at < chance.length && at <= sum * 2; at += 1) total += chance[at] ?? 0;
  return Math.min(1, total);
}
