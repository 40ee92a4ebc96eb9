/**
 * The middle value, or the mean of the two middle ones; `null` of none. Written here because the first load is counted
 * in bytes: simple-statistics' costs over 1 kB gzip there, and is what the tests hold this one against.
 */
export function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((x, y) => x - y);
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  return upper === undefined || lower === undefined ? null : (lower + upper) / 2;
}
