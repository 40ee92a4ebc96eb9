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

/** The operands of the table a product is looked for in: 2 up to the reach, and down to the fact's own 0 or 1. */
export function tableOf({ fact, reach }: Setting): readonly number[] {
  const from = Math.min(2, fact.a, fact.b);
  return Array.from({ length: Math.max(reach, fact.a, fact.b) - from + 1 }, (_, index) => from + index);
}
