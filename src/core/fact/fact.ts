/** The four operations. */
export type Operation = 'add' | 'sub' | 'mul' | 'div';

/** `mul-7-8`, `div-56-7`: operation, first and second operand; letters, digits and hyphens only. */
export type FactId = `${Operation}-${number}-${number}`;

/** One question with a whole-number answer: 7 × 8. */
export interface Fact {
  readonly id: FactId;
  readonly op: Operation;
  readonly a: number;
  readonly b: number;
  readonly answer: number;
}

const compute: Record<Operation, (a: number, b: number) => number> = {
  add: (a, b) => a + b,
  sub: (a, b) => a - b,
  mul: (a, b) => a * b,
  div: (a, b) => a / b,
};

/** The fact `a op b`; `null` when its answer is not a whole number from 0 up (3 − 5, 7 ÷ 2, 4 ÷ 0). */
export function makeFact(op: Operation, a: number, b: number): Fact | null {
  const answer = compute[op](a, b);
  if (!Number.isInteger(answer) || answer < 0) return null;
  return { id: `${op}-${a}-${b}`, op, a, b, answer };
}

const pattern = /^(add|sub|mul|div)-(\d{1,3})-(\d{1,3})$/;

/** The fact an id names; `null` for anything that is not the id of a fact. */
export function parseFact(id: string): Fact | null {
  const match = pattern.exec(id);
  if (!match) return null;
  const fact = makeFact(match[1] as Operation, Number(match[2]), Number(match[3]));
  return fact?.id === id ? fact : null;
}
