import { mean, sum } from 'simple-statistics';

/** What one group's mean is worth beside the others: the share of it that is kept, 0 to 1. */
export function meanWeight(between: number, within: number, count: number): number {
  return between === 0 || count === 0 ? 0 : between / (between + within / count);
}

/** How far groups differ and how far values within one do: two variances, and the centre of the groups. */
export interface VarianceParts {
  readonly centre: number;
  readonly between: number;
  readonly within: number;
}

/**
 * The variance between groups of different size and within them, by the analysis of variance (Searle, Casella
 * & McCulloch 1992, ch. 3; the same as REML where groups are of one size and differ at all), never under 0.
 * Empty groups are left out. `null` without two groups, or without a group of two.
 */
export function varianceParts(groups: readonly (readonly number[])[]): VarianceParts | null {
  const filled = groups.filter((group) => group.length > 0);
  const count = sum(filled.map((group) => group.length));
  const spare = count - filled.length;
  if (filled.length < 2 || spare === 0) return null;
  const grand = sum(filled.map((group) => sum([...group]))) / count;
  const around = filled.map((group) => ({ group, size: group.length, mean: mean([...group]) }));
  const withinSquares = sum(around.flatMap(({ group, mean }) => group.map((value) => (value - mean) ** 2)));
  const betweenSquares = sum(around.map((group) => group.size * (group.mean - grand) ** 2));
  const within = withinSquares / spare;
  const usualSize = (count - sum(filled.map((group) => group.length ** 2)) / count) / (filled.length - 1);
  const between = Math.max(0, (betweenSquares / (filled.length - 1) - within) / usualSize);
  return { centre: centreOf(around, between, within), between, within };
}

/** The mean of the groups, each counted by how well it is known. */
function centreOf(
  groups: readonly { readonly size: number; readonly mean: number }[],
  between: number,
  within: number,
): number {
  // Groups that differ in nothing at all would weigh 0 / 0: the sizes alone then weigh.
  const weights = groups.map(({ size }) => (between + within === 0 ? size : 1 / (between + within / size)));
  return sum(groups.map((group, index) => group.mean * (weights[index] ?? 0))) / sum(weights);
}

/** A mean drawn toward the centre: its value, the weight its own answers had, and its standard error. */
export interface Shrunk {
  readonly value: number;
  readonly weight: number;
  readonly error: number;
}

/** One group's mean drawn toward the centre by how little it rests on (normal–normal; on logs for times). */
export function shrink(groupMean: number, count: number, parts: VarianceParts): Shrunk {
  const weight = meanWeight(parts.between, parts.within, count);
  return {
    value: parts.centre + weight * (groupMean - parts.centre),
    weight,
    error: Math.sqrt(parts.between * (1 - weight)),
  };
}

/** Means of one known variance drawn toward their own mean (Efron & Morris 1975); four or more, else as given. */
export function jamesStein(
  means: readonly number[],
  variance: number,
): { readonly factor: number; readonly shrunk: readonly number[] } {
  const centre = means.length === 0 ? 0 : mean([...means]);
  const squares = sum(means.map((value) => (value - centre) ** 2));
  const kept = squares === 0 ? 0 : 1 - ((means.length - 3) * variance) / squares;
  const factor = means.length < 4 ? 1 : Math.max(0, kept);
  return { factor, shrunk: means.map((value) => centre + factor * (value - centre)) };
}
