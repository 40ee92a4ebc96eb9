import { type Fact, makeFact } from '../fact/fact';
import { turnAround } from '../fact/family';
import { productStrategies, quotientStrategies } from './product-strategies';
import type { Strategy } from './strategy';
import { differenceStrategies, sumStrategies } from './sum-strategies';

/** Every way to a fact, best first; the turn-around leads where neither number is so easy that it needs no other. */
export function strategiesFor(fact: Fact): readonly Strategy[] {
  const { op, a, b } = fact;
  const ways = waysTo(fact);
  const partner = turnAround(fact);
  if (!partner || ways.length === 0 || Math.min(a, b) < 2) return ways;
  return [{ kind: 'turnAround', sign: op === 'add' ? '+' : '×', a: b, b: a }, ...ways];
}

function waysTo({ op, a, b }: Fact): readonly Strategy[] {
  switch (op) {
    case 'add':
      return sumStrategies(a, b);
    case 'sub':
      return differenceStrategies(a, b);
    case 'mul':
      return productStrategies(a, b);
    case 'div':
      return quotientStrategies(a, b);
  }
}

/**
 * The strategy to show with a new fact: the first whose own facts the child knows, else the first that does not rest on
 * the turn-around. `none` for a fact beyond the tool's.
 */
export function strategyFor(fact: Fact, isKnown: (fact: Fact) => boolean): Strategy {
  const ways = strategiesFor(fact);
  const isEither = (one: Fact) => isKnown(one) || isKnown(turnAround(one) ?? one);
  const isReady = (way: Strategy) =>
    way.kind === 'turnAround' ? restsOn(way).every(isKnown) : restsOn(way).every(isEither);
  return ways.find(isReady) ?? ways.find(({ kind }) => kind !== 'turnAround') ?? { kind: 'none' };
}

/** The facts a strategy takes as known; none where it only counts, or moves by ten. */
export function restsOn(strategy: Strategy): readonly Fact[] {
  const facts = (...made: readonly (Fact | null)[]) => made.filter((fact) => fact !== null);
  switch (strategy.kind) {
    case 'turnAround':
      return facts(makeFact(strategy.sign === '+' ? 'add' : 'mul', strategy.a, strategy.b));
    case 'doubleAndOne':
    case 'doubleBetween':
    case 'half':
    case 'nearHalf':
      return facts(makeFact('add', strategy.n, strategy.n));
    case 'oneUnderTen':
      return facts(makeFact('add', strategy.a, strategy.b + 1));
    case 'thinkPlus':
      return facts(makeFact('add', strategy.b, strategy.a - strategy.b));
    case 'upToTen':
      return facts(makeFact('add', strategy.b, 10 - strategy.b));
    case 'doubled':
      return strategy.times === 1 ? [] : facts(makeFact('mul', 2, strategy.n));
    case 'splitLots':
      return facts(
        makeFact('mul', strategy.first, strategy.n),
        strategy.more > 1 ? makeFact('mul', strategy.more, strategy.n) : null,
      );
    case 'thinkTimes':
      return facts(makeFact('mul', strategy.b, strategy.a / strategy.b));
    default:
      return [];
  }
}
