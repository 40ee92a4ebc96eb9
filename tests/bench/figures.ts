import { quantile } from 'simple-statistics';

/** One figure over the rounds of a run: its median, and the least and the most of them. */
export interface Figure {
  readonly median: number;
  readonly least: number;
  readonly most: number;
}

/** A figure of several rounds. */
export function figureOf(rounds: readonly number[]): Figure {
  const sorted = rounds.toSorted((x, y) => x - y);
  return { median: at(sorted, 0.5), least: sorted[0] ?? Number.NaN, most: sorted.at(-1) ?? Number.NaN };
}

/** The value below which a share of the values lies; NaN of none. */
export function at(values: readonly number[], share: number): number {
  return values.length === 0 ? Number.NaN : quantile([...values], share);
}

/** `median (least–most)`, to so many decimals. */
export function written({ median, least, most }: Figure, decimals = 1): string {
  const text = (value: number) => value.toFixed(decimals);
  return `${text(median)} (${text(least)}–${text(most)})`;
}
