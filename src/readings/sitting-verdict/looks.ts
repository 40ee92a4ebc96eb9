/** One look at whether the clock goes with slower or wronger answers: after so many pairs of days with it and without, at such a chance of error. */
export interface Look {
  readonly days: number;
  readonly alpha: number;
}

/**
 * The looks taken in a season, and no others: many looks at 3 % each are not 3 %, so these share it out,
 * most of it on the eighth day (our own decision, no source). Between two looks the last one's word stands.
 */
const looks: readonly Look[] = [
  { days: 6, alpha: 0.003 },
  { days: 7, alpha: 0.004 },
  { days: 8, alpha: 0.017 },
  { days: 12, alpha: 0.002 },
  { days: 16, alpha: 0.002 },
  { days: 24, alpha: 0.001 },
  { days: 40, alpha: 0.001 },
];

/** Before the first nothing can be found; with the last a season ends. */
export const firstLookDays = Math.min(...looks.map(({ days }) => days));
export const lastLookDays = Math.max(...looks.map(({ days }) => days));

/** The look due after so many pairs of days, if one is. */
export function lookAfter(days: number): Look | null {
  return looks.find((look) => look.days === days) ?? null;
}
