import { type Fact, makeFact } from './fact';
import { factOfPair, inverse, pairOf } from './fact-list';

/** The partner with operands swapped: 8 × 7 for 7 × 8. `null` for ties, for − and for ÷, which have none. */
export function turnAround(fact: Fact): Fact | null {
  if (fact.op === 'sub' || fact.op === 'div' || fact.a === fact.b) return null;
  return makeFact(fact.op, fact.b, fact.a);
}

/** The facts made of the same numbers: 7 × 8, 8 × 7, 56 ÷ 8, 56 ÷ 7. Two for a tie; none divides by zero. */
export function familyOf(fact: Fact): readonly Fact[] {
  const [x, y] = pairOf(fact);
  const forward = fact.op === 'add' || fact.op === 'mul' ? fact.op : inverse[fact.op];
  const swapped = x === y ? [] : [[y, x] as const];
  return [forward, inverse[forward]]
    .flatMap((op) => [[x, y] as const, ...swapped].map(([a, b]) => factOfPair(op, a, b)))
    .filter((member) => member !== null);
}
