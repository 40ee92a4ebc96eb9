import { gammaln } from 'simple-statistics';

/** The chance of exactly `count` out of `of` when each comes with chance `share`. */
export function binomialChance(count: number, of: number, share: number): number {
  if (share === 0 || share === 1) return count === of * share ? 1 : 0;
  const ways = gammaln(of + 1) - gammaln(count + 1) - gammaln(of - count + 1);
  return Math.exp(ways + count * Math.log(share) + (of - count) * Math.log(1 - share));
}

/** The chance of at most `count` out of `of` when each comes with chance `share`. */
export function binomialUpTo(count: number, of: number, share: number): number {
  let chance = 0;
  for (let at = 0; at <= Math.min(count, of); at += 1) chance += binomialChance(at, of, share);
  return Math.min(1, chance);
}
