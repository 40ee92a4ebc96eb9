import type { Dice } from '../../core/sheet/dice';

/** A sign-flip test of a mean of paired differences; p-values are shares 0 to 1. */
export interface SignFlip {
  readonly pairs: number;
  readonly sum: number;
  readonly pGreater: number;
  readonly pLess: number;
  readonly pTwoSided: number;
  /** False where flips were drawn with the dice instead of all being counted. */
  readonly exact: boolean;
}

/** Up to here all 2^n flips are counted, as pairs of two sorted halves. */
export const mostPairsCounted = 36;

const flipsDrawn = 19_999;

/**
 * Fisher's test of a mean of 0 over all flips of signs (Fisher 1935 §21). Beyond `mostPairsCounted` pairs
 * 19,999 flips are drawn with `dice`, and the flip seen counts as one of 20,000.
 */
export function signFlip(differences: readonly number[], dice: Dice): SignFlip {
  const sum = total(differences);
  const exact = differences.length <= mostPairsCounted;
  // Sums of the same numbers in another order differ in the last bits: such sums are the same sum.
  const slack = 1e-10 * total(differences.map(Math.abs));
  const shareAtLeast = exact ? counted(differences) : drawn(differences, sum, dice);
  const pGreater = shareAtLeast(sum - slack);
  // Flipping every sign turns each sum round, so the lower tail is the upper tail of the other sign.
  const pLess = shareAtLeast(-sum - slack);
  const beyond = Math.abs(sum) - slack;
  const pTwoSided = beyond <= 0 ? 1 : Math.min(1, 2 * shareAtLeast(beyond));
  return { pairs: differences.length, sum, pGreater, pLess, pTwoSided, exact };
}

function counted(differences: readonly number[]): (least: number) => number {
  const middle = differences.length >> 1;
  const left = flippedSums(differences.slice(0, middle));
  const right = flippedSums(differences.slice(middle));
  return (least) => {
    let first = right.length;
    let count = 0;
    for (const sum of left) {
      while (first > 0 && sum + (right[first - 1] ?? 0) >= least) first -= 1;
      count += right.length - first;
    }
    return count / (left.length * right.length);
  };
}

/** The sums of every flip of signs, smallest first. */
function flippedSums(differences: readonly number[]): Float64Array {
  const sums = new Float64Array(2 ** differences.length);
  differences.forEach((difference, index) => {
    const size = 2 ** index;
    for (let at = 0; at < size; at += 1) {
      const so = sums[at] ?? 0;
      sums[at] = so - difference;
      sums[at + size] = so + difference;
    }
  });
  return sums.sort();
}

function drawn(differences: readonly number[], seen: number, dice: Dice): (least: number) => number {
  const sums = Array.from({ length: flipsDrawn }, () =>
    total(differences.map((difference) => (dice.below(2) === 0 ? difference : -difference))),
  );
  const all = [...sums, seen, -seen];
  return (least) => all.filter((sum) => sum >= least).length / all.length;
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
