import type { Fact } from '../../core/fact/fact';
import type { Reach } from '../../core/fact/fact-list';
import type { Pad } from './pad';

/** What a wrong answer is read against. `before` is the answer given on the card before, if one was. */
export interface Setting {
  readonly fact: Fact;
  readonly before: number | null;
  readonly pad: Pad;
  /** How far the child's tables go. */
  readonly reach: Reach;
}

/** A wrong answer that was keyed: its digits as they fell, and the number they are. */
export interface Guess extends Setting {
  readonly digits: string;
  readonly number: number;
}

/** The least and the greatest operand of the table a product is looked for in. */
export interface Table {
  readonly from: number;
  readonly to: number;
}

/** From 2 up to the reach, and down to the fact's own 0 or 1. */
export function tableOf({ fact, reach }: Setting): Table {
  return { from: Math.min(2, fact.a, fact.b), to: Math.max(reach, fact.a, fact.b) };
}

/** All products of a table, each once. */
export function productsOf({ from, to }: Table): readonly number[] {
  const products = new Set<number>();
  for (let x = from; x <= to; x += 1) for (let y = from; y <= x; y += 1) products.add(x * y);
  return [...products];
}
