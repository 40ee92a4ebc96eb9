import { gammaln } from 'simple-statistics';

/** The chance of exactly `count` out of `of` when each comes with chance `share`. */
export function binomialChance(count: number, of: number, share: number): number {
  if (share === 0 || share === 1) return count === of * share ? 1 : 0;
  if (of <= mostMultiplied) return ways(count, of) * share ** count * (1 - share) ** (of - count);
  const logWays = gammaln(of + 1) - gammaln(count + 1) - gammaln(of - count + 1);
  return Math.exp(logWays + count * Math.log(share) + (of - count) * Math.log(1 - share));
}

/** Up to here the count of ways fits a number, and chances of a fair coin come out exact to the last bit. */
const mostMultiplied = 1000;

function ways(count: number, of: number): number {
  let product = 1;
  for (let at = 1; at <= count; at += 1) product = (product * (of - count + at)) / at;
  return product;
}

/** The chance of at most `count` out of `of` when each comes with chance `share`. */
export function binomialUpTo(count: number, of: number, share: number): number {
  let chance = 0;
  for (let at = 0; at <= Math.min(count, of); at += 1) chance += binomialChance(at, of, share);
  return Math.min(1, chance);
}
