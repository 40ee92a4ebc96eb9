import type { Fact } from './fact';
import { pairOf } from './fact-list';

/**
 * What kind of fact it is: for the choice of a twin, and because ties, 0s and 1s are answered differently
 * from the rest (Campbell & Gunter 2002; Roy et al. 2025).
 */
export type FactClass =
  | 'zeroOrOne'
  | 'tie'
  | 'withinTen'
  | 'bridgingTen'
  | 'twosFivesTens'
  | 'threesFours'
  | 'sixesUp';

/**
 * The class of a fact, by the pair behind it, so that a family has one class. The
 * first that fits: a 0 or 1; a tie; then for + and − whether the sum stays within ten, for × and ÷ the
 * easiest table it is in. The three groups of tables are common practice, no source.
 */
export function factClass(fact: Fact): FactClass {
  const [x, y] = pairOf(fact);
  const isIn = (...tables: number[]) => tables.includes(x) || tables.includes(y);
  if (isIn(0, 1)) return 'zeroOrOne';
  if (x === y) return 'tie';
  if (fact.op === 'add' || fact.op === 'sub') return x + y <= 10 ? 'withinTen' : 'bridgingTen';
  if (isIn(2, 5, 10)) return 'twosFivesTens';
  return isIn(3, 4) ? 'threesFours' : 'sixesUp';
}
