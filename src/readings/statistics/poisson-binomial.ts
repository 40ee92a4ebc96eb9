import { normalTail } from './normal-tail';

/** Up to so many tries all counts of hits are worked out; beyond it the normal curve is as good. */
const mostExact = 1000;

/** The chance of at least `least` hits when each try has a chance of its own (Poisson's binomial). */
export function hitsAtLeast(least: number, chances: readonly number[]): number {
  if (least <= 0) return 1;
  return chances.length <= mostExact ? exactly(least, chances) : nearly(least, chances);
}

function exactly(least: number, chances: readonly number[]): number {
  const hits = new Float64Array(chances.length + 1);
  hits[0] = 1;
  chances.forEach((chance, tries) => {
    for (let at = tries + 1; at > 0; at -= 1) {
      hits[at] = (hits[at] ?? 0) * (1 - chance) + (hits[at - 1] ?? 0) * chance;
    }
    hits[0] = (hits[0] ?? 0) * (1 - chance);
  });
  return Math.min(
    1,
    hits.slice(least).reduce((sum, chance) => sum + chance, 0),
  );
}

function nearly(least: number, chances: readonly number[]): number {
  const middle = chances.reduce((sum, chance) => sum + chance, 0);
  const spread = Math.sqrt(chances.reduce((sum, chance) => sum + chance * (1 - chance), 0));
  if (spread === 0) return least <= middle ? 1 : 0;
  return normalTail((least - 0.5 - middle) / spread);
}
