import { type FactId, parseFact } from '../fact/fact';
import { knownFact } from '../fact/fact-list';
import type { MarkedPlace } from '../marking/marked';
import { arrange } from '../sheet/arrange';
import { makeDice } from '../sheet/dice';
import { type HadSource, isUntried } from './to-teach';

/**
 * The facts of a first try, each once, in an order from the seed: those of the set never answered and not ticked, at
 * most `most`. Empty once all were tried, so that a pass broken off goes on another day and none comes twice.
 */
export function firstTryFacts(
  set: readonly FactId[],
  source: HadSource,
  most: number,
  seed: number,
): readonly FactId[] {
  const dice = makeDice(seed);
  const untried = set.filter((fact) => isUntried(fact, source));
  const drawn = untried.length > most ? dice.shuffled(untried).slice(0, most) : untried;
  const { facts } = arrange(
    drawn.flatMap((fact) => knownFact(fact) ?? []),
    dice,
  );
  return facts.map(({ id }) => id);
}

/** What a first try says: what is the child's already, of that what took longer than a moment, and what is to be taught. */
export interface FirstTry {
  readonly yours: readonly FactId[];
  /** Among `yours`: right, but thought out rather than known; not taught, only practised. */
  readonly slow: readonly FactId[];
  readonly toTeach: readonly FactId[];
  readonly notReached: readonly FactId[];
}

/** About 3 s is quick: a convention of classrooms, not a measured border (Van de Walle). */
export const quickMs = 3000;

/** Reads a first try, as marked. `handMs`: the child's hand time; without times nothing is called slow. */
export function readFirstTry(places: readonly MarkedPlace[], handMs: number): FirstTry {
  const idsOf = (among: readonly MarkedPlace[]) => [
    ...new Set(among.flatMap(({ prompt }) => parseFact(prompt)?.id ?? [])),
  ];
  const right = places.filter(({ outcome }) => outcome === 'right');
  return {
    yours: idsOf(right),
    slow: idsOf(right.filter(({ firstKeyMs }) => firstKeyMs !== null && firstKeyMs - handMs >= quickMs)),
    toTeach: idsOf(places.filter(({ outcome }) => outcome === 'wrong' || outcome === 'skipped')),
    notReached: idsOf(places.filter(({ outcome }) => outcome === 'notReached' || outcome === 'unfinished')),
  };
}
