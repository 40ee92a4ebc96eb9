import { type Guess, type Table, tableOf } from './guess';
import { operationsGiving } from './operations-giving';
import { keysTouch } from './pad';

/** What the number given looks like; several may hold at once. */
export type AnswerFlag =
  | 'reversal'
  | 'runTogether'
  | 'otherOperation'
  | 'operandNamed'
  | 'operand'
  | 'closeOperand'
  | 'offByOne'
  | 'offByTwo'
  | 'countingString'
  | 'table'
  | 'nonTable'
  | 'tenSlip'
  | 'keyingSlip'
  | 'perseveration';

/** How near another operand must be to the one it replaced to be a close one. */
const close = 2;

/**
 * The definitions, for a wrong answer r to a ∘ b = c. Operand, table and operation errors after Campbell &
 * Graham 1985 and Harley 1990, counting string after Geary, Hoard & Bailey 2011; the rest our own.
 */
export const answerTests: Readonly<Record<AnswerFlag, (guess: Guess) => boolean>> = {
  reversal: ({ digits, fact }) => isReversal(digits, String(fact.answer)),
  runTogether: ({ digits, fact }) => digits === `${fact.a}${fact.b}`,
  otherOperation: ({ number, fact }) => operationsGiving(fact, number).length > 0,
  operandNamed: ({ number, fact }) => number === fact.a || number === fact.b,
  operand: (guess) => operandsAway(guess) !== null,
  closeOperand: (guess) => (operandsAway(guess) ?? close + 1) <= close,
  offByOne: ({ number, fact }) => Math.abs(number - fact.answer) === 1,
  offByTwo: ({ number, fact }) => Math.abs(number - fact.answer) === 2,
  countingString: ({ number, fact }) => fact.op === 'add' && (number === fact.a + 1 || number === fact.b + 1),
  table: (guess) => guess.fact.op === 'mul' && isProduct(guess),
  nonTable: (guess) => guess.fact.op === 'mul' && !isProduct(guess),
  tenSlip: ({ number, fact }) => Math.abs(number - fact.answer) === 10,
  keyingSlip: ({ digits, fact, pad }) => pad !== 'pencil' && isKeyingSlip(digits, String(fact.answer), pad),
  perseveration: ({ number, before }) => number === before,
};

/** Every flag, in the order of the definitions. */
export const answerFlags = Object.keys(answerTests) as readonly AnswerFlag[];

/** How far the nearest operand that would give this product is from the one it replaced; `null` for none. */
function operandsAway(guess: Guess): number | null {
  const { fact, number } = guess;
  if (fact.op !== 'mul') return null;
  const table = tableOf(guess);
  const away = (kept: number, replaced: number) => {
    const x = number / kept;
    return isIn(table, x) ? Math.abs(x - replaced) : Number.POSITIVE_INFINITY;
  };
  const nearest = Math.min(away(fact.a, fact.b), away(fact.b, fact.a));
  return nearest === Number.POSITIVE_INFINITY ? null : nearest;
}

function isProduct(guess: Guess): boolean {
  const table = tableOf(guess);
  if (guess.number === 0) return table.from === 0;
  for (let x = Math.max(1, table.from); x <= table.to; x += 1) if (isIn(table, guess.number / x)) return true;
  return false;
}

function isIn({ from, to }: Table, x: number): boolean {
  return Number.isInteger(x) && x >= from && x <= to;
}

function isReversal(digits: string, truth: string): boolean {
  if (digits.length !== truth.length) return false;
  for (let place = 0; place < digits.length; place += 1) {
    if (digits[place] !== truth[truth.length - 1 - place]) return false;
  }
  return true;
}

/** One digit on a key that touches the right one, or a digit doubled or dropped. */
function isKeyingSlip(digits: string, truth: string, pad: Guess['pad']): boolean {
  const from = firstDifference(digits, truth);
  switch (digits.length - truth.length) {
    case 0:
      return (
        digits.slice(from + 1) === truth.slice(from + 1) &&
        keysTouch(pad, digits.charAt(from), truth.charAt(from))
      );
    case 1:
      return from > 0 && digits[from] === truth[from - 1] && digits.slice(from + 1) === truth.slice(from);
    case -1:
      return digits !== '' && digits.slice(from) === truth.slice(from + 1);
    default:
      return false;
  }
}

/** The first place where two numbers as keyed part. */
function firstDifference(one: string, other: string): number {
  let place = 0;
  while (place < one.length && one[place] === other[place]) place += 1;
  return place;
}
