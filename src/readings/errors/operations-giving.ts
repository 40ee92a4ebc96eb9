import { type Fact, makeFact, type Operation } from '../../core/fact/fact';

const operations: readonly Operation[] = ['add', 'sub', 'mul', 'div'];

/** The other operations that make `number` of the fact's operands: for 5 × 0 and 5 both + and −. */
export function operationsGiving(fact: Fact, number: number): readonly Operation[] {
  return operations.filter((op) => op !== fact.op && makeFact(op, fact.a, fact.b)?.answer === number);
}

/** Whether a right answer can't tell which operation was done: 2 + 2, 2 × 2, 5 − 0, 7 ÷ 1. */
export function isRightByAnother(fact: Fact): boolean {
  return operationsGiving(fact, fact.answer).length > 0;
}
