import type { Fact, Operation } from './fact';

/** The four signs: U+002B, U+2212, U+00D7, U+00F7. */
export const signs: Readonly<Record<Operation, string>> = { add: '+', sub: '−', mul: '×', div: '÷' };

/** A fact as written on one line: `7 × 8`. */
export function writtenFact(fact: Fact): string {
  return `${fact.a} ${signs[fact.op]} ${fact.b}`;
}

/** A whole fact as written on one line: `7 × 8 = 56`. */
export function writtenWhole(fact: Fact): string {
  return `${writtenFact(fact)} = ${fact.answer}`;
}

/** How many digits the answer has: 1 for 0 to 9. */
export function answerDigits(fact: Fact): number {
  return String(fact.answer).length;
}

/** The parts of a written fact. Stacked, the numbers stand right-aligned in `columns` columns of one digit. */
export type FactLayout =
  | { readonly layout: 'across'; readonly first: string; readonly sign: string; readonly second: string }
  | {
      readonly layout: 'stacked';
      readonly first: string;
      readonly sign: string;
      readonly second: string;
      readonly columns: number;
    };

/** Lays a fact out on one line or one number under the other; room is kept for the answer's digits. */
export function layFact(fact: Fact, layout: 'across' | 'stacked'): FactLayout {
  const first = String(fact.a);
  const second = String(fact.b);
  const sign = signs[fact.op];
  if (layout === 'across') return { layout, first, sign, second };
  return { layout, first, sign, second, columns: Math.max(first.length, second.length, answerDigits(fact)) };
}
