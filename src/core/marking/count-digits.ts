/** Digits given that stand where the true answer has them, and digits given beyond its length. */
export interface DigitCount {
  readonly correct: number;
  readonly extra: number;
}

/**
 * Counts digits correct place by place from the units: for 42, "41" has 1 and "12" has 1; for 12, "112" has 2 and one
 * extra-digit error (Deno & Mirkin 1977; Burns, VanDerHeyden & Jiban 2006, School Psychology Review 35, 401–418).
 */
export function countDigits(answer: number, given: string): DigitCount {
  const truth = String(answer);
  if (given === truth) return { correct: truth.length, extra: 0 };
  let correct = 0;
  for (let units = 1; units <= Math.min(truth.length, given.length); units += 1) {
    if (truth.at(-units) === given.at(-units)) correct += 1;
  }
  return { correct, extra: Math.max(0, given.length - truth.length) };
}
