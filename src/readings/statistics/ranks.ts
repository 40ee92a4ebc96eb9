/** The rank of each value among all, smallest first from 1; equal values share the mean of their ranks. */
export function midRanks(values: readonly number[]): readonly number[] {
  const order = values.map((_, index) => index).sort((x, y) => (values[x] ?? 0) - (values[y] ?? 0));
  const ranks = new Array<number>(values.length).fill(0);
  let start = 0;
  while (start < order.length) {
    let end = start + 1;
    while (end < order.length && values[order[end] ?? 0] === values[order[start] ?? 0]) end += 1;
    for (const index of order.slice(start, end)) ranks[index] = (start + 1 + end) / 2;
    start = end;
  }
  return ranks;
}
