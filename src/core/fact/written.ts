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
