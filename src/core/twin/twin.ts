import type { Fact, FactId } from '../fact/fact';
import { factClass } from '../fact/fact-class';
import { factsOf, isBasic, pairOf } from '../fact/fact-list';
import type { FactSummary } from '../summary/summary';

/** What the choice of a twin reads of a child. */
export interface TwinSource {
  readonly facts: ReadonlyMap<FactId, FactSummary>;
  /** Not to be asked while others remain: what waits for mending, and today's twins. */
  readonly avoid: ReadonlySet<FactId>;
}

/**
 * The twin of a miscalculated fact: another of the same operation and class, never one of its family, since the
 * fact just put right would give that answer away. Those the child has met come first, then those to be avoided last,
 * then the nearest in how well the child knows them, then in their numbers. `null` where its class holds no other,
 * which is so of no fact of the tool. That a twin follows is common practice, no source; the order is our own.
 */
export function twinOf(fact: Fact, { facts, avoid }: TwinSource): Fact | null {
  const kind = factClass(fact);
  const isKin = (other: Fact) => factClass(other) === kind && !isFamily(other, fact);
  const reach = isBasic(fact.id) ? 9 : 12;
  const kin = factsOf(fact.op, 12).filter(isKin);
  const isWithin = ({ id }: Fact) => facts.has(id) || reach === 12 || isBasic(id);
  const wanted = knowing(facts.get(fact.id));
  const ranked = kin.filter(isWithin).map((other) => ({
    other,
    ranks: [
      Number(avoid.has(other.id)),
      Number(!facts.has(other.id)),
      Math.round(Math.abs(knowing(facts.get(other.id)) - wanted) * 10),
      distance(other, fact),
      Number(other.answer === fact.answer),
    ],
  }));
  ranked.sort((x, y) => compareRanks(x.ranks, y.ranks));
  return ranked[0]?.other ?? null;
}

/** The twins of several facts, one each in their order: none of the facts themselves, none twice while others remain. */
export function twinsOf(missed: readonly Fact[], { facts, avoid }: TwinSource): readonly (Fact | null)[] {
  const taken = new Set([...avoid, ...missed.map(({ id }) => id)]);
  return missed.map((fact) => {
    const twin = twinOf(fact, { facts, avoid: taken });
    if (twin) taken.add(twin.id);
    return twin;
  });
}

function isFamily(x: Fact, y: Fact): boolean {
  return String(pairOf(x).toSorted(upward)) === String(pairOf(y).toSorted(upward));
}

/** Share right of the newest answers, drawn toward a half where there are few. */
function knowing(fact: FactSummary | undefined): number {
  const recent = fact?.recent ?? '';
  const right = [...recent].filter((mark) => mark === '1').length;
  return (right + 0.5) / (recent.length + 1);
}

/** How far apart two facts lie, their numbers compared whichever way round is nearer; 0s and 1s keep apart. */
function distance(x: Fact, y: Fact): number {
  const [small, large] = pairOf(x).toSorted(upward);
  const [least, most] = pairOf(y).toSorted(upward);
  const leap = (from = 0, to = 0) => Math.abs(from - to) * (Math.min(from, to) <= 1 ? 10 : 1);
  return leap(small, least) + leap(large, most);
}

function upward(x: number, y: number): number {
  return x - y;
}

function compareRanks(x: readonly number[], y: readonly number[]): number {
  const at = x.findIndex((rank, index) => rank !== y[index]);
  return at < 0 ? 0 : (x[at] ?? 0) - (y[at] ?? 0);
}
