import type { FactId } from '../fact/fact';

/** One card of a round; `isNew`: a new fact's first, which shows the whole fact. */
export interface RoundCard {
  readonly fact: FactId;
  readonly isNew: boolean;
}

/**
 * New facts folded in among known ones, in the published order of incremental rehearsal: U, K1; U, K1, K2; … to `depth`
 * known ones; then U becomes the first known one and the last one leaves (Burns et al. 2019). With fewer known facts
 * than `depth` none leaves; with fewer than two the last step comes twice, or the new fact would only be shown.
 */
export function rehearse(
  fresh: readonly FactId[],
  known: readonly FactId[],
  depth: number,
): readonly RoundCard[] {
  const cards: RoundCard[] = [];
  const met = new Set<FactId>();
  let others = known.slice(0, depth);
  for (const fact of fresh) {
    for (const many of stepsAmong(others.length)) {
      cards.push({ fact, isNew: !met.has(fact) });
      met.add(fact);
      cards.push(...others.slice(0, many).map((other) => ({ fact: other, isNew: false })));
    }
    others = [fact, ...others].slice(0, depth);
  }
  return cards;
}

/** How many cards a round has, and how many of them show a new fact; 54 for one new fact among nine known ones. */
export function countCards(fresh: number, known: number, depth: number): number {
  let cards = 0;
  let others = Math.min(known, depth);
  for (let done = 0; done < fresh; done += 1) {
    cards += stepsAmong(others).reduce((sum, many) => sum + 1 + many, 0);
    others = Math.min(others + 1, depth);
  }
  return cards;
}

/** How many known facts follow the new one at each of its steps. */
function stepsAmong(others: number): readonly number[] {
  if (others < 2) return [others, others];
  return Array.from({ length: others }, (_, step) => step + 1);
}
