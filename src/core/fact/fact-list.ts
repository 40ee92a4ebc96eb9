import { type Fact, type FactId, makeFact, type Operation } from './fact';

/** How far the facts reach: to 9 + 9 and 9 × 9 (the basic facts), or × and ÷ to 12 × 12 as well. */
export type Reach = 9 | 12;

/** The operation that takes an operation back: + and −, × and ÷. */
export const inverse: Readonly<Record<Operation, Operation>> = {
  add: 'sub',
  sub: 'add',
  mul: 'div',
  div: 'mul',
};

/** The fact of `op` that the pair (x, y) stands for: x + y, x × y, (x + y) − y, (x × y) ÷ y; `null` for ÷ 0. */
export function factOfPair(op: Operation, x: number, y: number): Fact | null {
  if (op === 'sub') return makeFact('sub', x + y, y);
  return op === 'div' ? makeFact('div', x * y, y) : makeFact(op, x, y);
}

/** The pair behind a fact: its addends or factors, the second one as it stands in the fact. */
export function pairOf(fact: Fact): readonly [x: number, y: number] {
  return [fact.op === 'sub' || fact.op === 'div' ? fact.answer : fact.a, fact.b];
}

/** Every fact of an operation, by rising pair; + and − always stop at 9. 100, 100, 100 and 90 basic facts. */
export function factsOf(op: Operation, reach: Reach = 9): readonly Fact[] {
  const top = op === 'mul' || op === 'div' ? reach : 9;
  const facts: Fact[] = [];
  for (let x = 0; x <= top; x++) {
    for (let y = 0; y <= top; y++) {
      const fact = factOfPair(op, x, y);
      if (fact) facts.push(fact);
    }
  }
  return facts;
}

/** In the order taught. */
export const operations: readonly Operation[] = ['add', 'sub', 'mul', 'div'];

const everyFact: ReadonlyMap<string, Fact> = new Map(
  operations.flatMap((op) => factsOf(op, 12).map((fact) => [fact.id, fact])),
);

/** The fact of that id among all facts of the tool (× and ÷ to 12s too); `null` for any other. */
export function knownFact(id: string): Fact | null {
  return everyFact.get(id) ?? null;
}

/** Whether a fact is one of the 390 basic facts. */
export function isBasic(id: FactId): boolean {
  const fact = knownFact(id);
  return fact !== null && pairOf(fact).every((part) => part <= 9);
}
