import type { Fact, Operation } from '../../core/fact/fact';
import { factOfPair, type Reach } from '../../core/fact/fact-list';
import { signs } from '../../core/fact/written';

/** One line of a grid: what its header shows and says. */
export interface Line {
  readonly head: string;
  readonly says: string;
}

/** An operation's facts as a table: rows down, columns across, and no fact where division by zero would stand. */
export interface TableShape {
  readonly op: Operation;
  readonly rows: readonly Line[];
  readonly columns: readonly Line[];
  /** `facts[row][column]`. */
  readonly facts: readonly (readonly (Fact | null)[])[];
}

/**
 * The table of an operation; + and − always stop at 9. In − and ÷ a row holds one answer, as the partner of
 * the addition or multiplication table: row 8, column − 5 is 13 − 5.
 */
export function tableShape(op: Operation, reach: Reach): TableShape {
  const most = op === 'mul' || op === 'div' ? reach : 9;
  const numbers = Array.from({ length: most + 1 }, (_, number) => number);
  const across = op === 'div' ? numbers.slice(1) : numbers;
  const isForward = op === 'add' || op === 'mul';
  return {
    op,
    rows: numbers.map((number) => ({
      head: isForward ? `${number}` : `= ${number}`,
      says: isForward ? `${number} first` : `answer ${number}`,
    })),
    columns: across.map((number) => ({ head: `${signs[op]} ${number}`, says: `${words[op]} ${number}` })),
    facts: numbers.map((down) => across.map((over) => factOfPair(op, down, over))),
  };
}

const words: Record<Operation, string> = { add: 'plus', sub: 'minus', mul: 'times', div: 'divided by' };

/** The number printed in a cell: the table's own, so that the grid reads as the table everyone knows. */
export function cellNumber(fact: Fact): number {
  return fact.op === 'add' || fact.op === 'mul' ? fact.answer : fact.a;
}
