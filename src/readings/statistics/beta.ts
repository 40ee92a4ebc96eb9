import { gammaln } from 'simple-statistics';

/** A beta spread over shares 0 to 1; `right / (right + wrong)` is its mean. Both over 0, need not be whole. */
export interface Beta {
  readonly right: number;
  readonly wrong: number;
}

/** The mean share. */
export function betaMean({ right, wrong }: Beta): number {
  return right / (right + wrong);
}

/** ln B(right, wrong). */
export function logBeta({ right, wrong }: Beta): number {
  return gammaln(right) + gammaln(wrong) - gammaln(right + wrong);
}

/** How sure it is that the share lies below `share`: the regularised incomplete beta (DLMF 8.17.22). */
export function betaBelow(of: Beta, share: number): number {
  return below(of, share, logBeta(of));
}

/** The same of many shares of one spread. */
export function betaBelowEach(of: Beta): (share: number) => number {
  const log = logBeta(of);
  return (share) => below(of, share, log);
}

/** `log` is ln B of the spread, which is the same for its mirror. */
function below(of: Beta, share: number, log: number): number {
  if (share <= 0) return 0;
  if (share >= 1) return 1;
  // The fraction converges fast only on the near side of the mean; the far side is its mirror.
  if (share > (of.right + 1) / (of.right + of.wrong + 2)) {
    return 1 - below({ right: of.wrong, wrong: of.right }, 1 - share, log);
  }
  const front = of.right * Math.log(share) + of.wrong * Math.log(1 - share) - log;
  return (Math.exp(front) / of.right) * continuedFraction(of, share);
}

/** Lentz's evaluation of the continued fraction, to the last bits. */
function continuedFraction({ right: a, wrong: b }: Beta, x: number): number {
  let value = 1;
  let over = 1;
  let under = 0;
  for (let step = 1; step < 500; step += 1) {
    const m = step >> 1;
    const term =
      step % 2 === 1
        ? (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
        : (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    under = 1 / (1 + term * under);
    over = 1 + term / over;
    value *= over * under;
    if (Math.abs(over * under - 1) < 1e-15) break;
  }
  return 1 / value;
}

/** The share below which the spread lies with `chance`, by halving, to the last bits unless fewer halvings are asked for. */
export function betaQuantile(of: Beta, chance: number, halvings = 52): number {
  const belowShare = betaBelowEach(of);
  let low = 0;
  let high = 1;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (belowShare(middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
