/** The chance of at least `least` hits when each try has a chance of its own (Poisson's binomial, exact). */
export function hitsAtLeast(least: number, chances: readonly number[]): number {
  const hits = new Float64Array(chances.length + 1);
  hits[0] = 1;
  chances.forEach((chance, tries) => {
    for (let at = tries + 1; at >= 0; at -= 1) {
      hits[at] = (hits[at] ?? 0) * (1 - chance) + (at > 0 ? (hits[at - 1] ?? 0) * chance : 0);
    }
  });
  return Math.min(
    1,
    hits.slice(Math.max(0, least)).reduce((sum, chance) => sum + chance, 0),
  );
}
