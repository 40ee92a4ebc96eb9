import type { FactId } from '../fact/fact';
import { knownFact } from '../fact/fact-list';
import { turnAround } from '../fact/family';
import { isHad, toTeach } from '../first-try/to-teach';
import { factStrength } from '../memory/fact-strength';
import type { Day } from '../record/stamp';
import { makeDice } from '../sheet/dice';
import type { Summary } from '../summary/summary';
import { depthBounds, fitRound } from './fit-round';
import { howManyNew } from './how-many-new';
import { type RoundCard, rehearse } from './rehearse';

/** What a card round is made from. */
export interface RoundOrder {
  readonly today: Day;
  /** The current set in its order. */
  readonly set: readonly FactId[];
  /** Facts of the kept sets. */
  readonly kept: readonly FactId[];
  readonly ticked: ReadonlySet<FactId>;
  readonly summary: Pick<Summary, 'facts' | 'rounds'>;
  /** New facts a day where the parent fixed them; `null` follows the child. */
  readonly fixedNew: number | null;
  readonly budgetMs: number;
  readonly mostCards: number;
  /** What a card takes this child. */
  readonly cardMs: number;
  readonly seed: number;
}

/** A card round. `fresh` are its new facts; in a round without one the weakest of the set take their part, unshown. */
export interface Round {
  readonly cards: readonly RoundCard[];
  readonly fresh: readonly FactId[];
}

/** Today's card round: the same for the same order; `null` where there is no time for one, or no set. */
export function planRound(order: RoundOrder): Round | null {
  const { set, summary, ticked, seed } = order;
  const source = { facts: summary.facts, ticked };
  // What an earlier day taught is asked before it is shown again: only so can it be told what stayed.
  const waiting = new Set(summary.rounds.flatMap((round) => round.waiting));
  const untaught = toTeach(set, source).filter((fact) => !waiting.has(fact));
  const open = inTeachingOrder(untaught, summary);
  const isTaught = open.length > 0;
  const many = howManyNew(summary.rounds, order.fixedNew);
  const folded = (isTaught ? open : weakestFirst(set, order)).slice(0, many);
  const others = [...new Set([...order.kept, ...ticked, ...set])];
  const had = others.filter((fact) => isHad(fact, source) && !waiting.has(fact));
  const asked = set.filter((fact) => waiting.has(fact));
  const secure = makeDice(seed).shuffled(had).sort(securestFirst(summary));
  const known = awayFrom(folded, [...asked, ...secure]);
  const size = fitRound({ ...order, fresh: folded.length, known: Math.min(known.length, depthBounds.most) });
  if (!size) return null;
  const facts = folded.slice(0, size.fresh);
  const cards = rehearse(facts, known, size.depth);
  if (!isTaught) return { cards: cards.map(({ fact }) => ({ fact, isNew: false })), fresh: [] };
  return { cards, fresh: facts };
}

/** Those of earlier rounds that did not stay come first, then the set's order, each with its turn-around behind it. */
function inTeachingOrder(facts: readonly FactId[], { rounds }: RoundOrder['summary']): readonly FactId[] {
  const begun = new Set(rounds.flatMap(({ missed }) => missed));
  const open = new Set(facts);
  const ordered = new Set<FactId>();
  for (const fact of facts.toSorted((x, y) => Number(begun.has(y)) - Number(begun.has(x)))) {
    ordered.add(fact);
    const partner = partnerOf(fact);
    if (partner && open.has(partner)) ordered.add(partner);
  }
  return [...ordered];
}

function weakestFirst(set: readonly FactId[], { summary, today }: RoundOrder): readonly FactId[] {
  const strength = new Map(set.map((fact) => [fact, factStrength(summary.facts.get(fact), today)]));
  const of = (fact: FactId) => strength.get(fact) ?? Number.NEGATIVE_INFINITY;
  return set.toSorted((x, y) => (of(x) === of(y) ? 0 : of(x) - of(y)));
}

/** Among the known ones a turn-around would give the new fact's answer away on every other card. */
function awayFrom(folded: readonly FactId[], facts: readonly FactId[]): readonly FactId[] {
  const near = new Set(folded.flatMap((fact) => [fact, partnerOf(fact)]));
  return facts.filter((fact) => !near.has(fact));
}

function partnerOf(fact: FactId): FactId | null {
  const known = knownFact(fact);
  return (known && turnAround(known)?.id) ?? null;
}

/** Facts with three right answers running, then those nobody has asked, then the others. */
function securestFirst({ facts }: RoundOrder['summary']) {
  const rank = (fact: FactId) => {
    const recent = facts.get(fact)?.recent;
    if (recent === undefined) return 1;
    return recent.endsWith('111') ? 0 : 2;
  };
  return (x: FactId, y: FactId) => rank(x) - rank(y);
}
