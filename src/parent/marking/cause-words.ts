import type { Fact, Operation } from '../../core/fact/fact';
import { signs } from '../../core/fact/written';
import type { ErrorName, ReadError } from '../../readings/errors/read-error';

/** An operation as said of an answer: `the answer to 7 + 8`. */
const others = (fact: Fact, operations: readonly Operation[]) =>
  operations.map((op) => `${fact.a} ${signs[op]} ${fact.b}`).join(' or ');

const plain: Readonly<Record<Exclude<ErrorName, 'otherOperation' | 'operand' | 'cannotTell'>, string>> = {
  omission: 'nothing keyed',
  rapidGuess: 'keyed before it could be read',
  reversal: 'the right digits, turned round',
  runTogether: 'the two numbers side by side',
  operandNamed: 'one of the two numbers asked',
  offByOne: 'one too many or one too few',
  offByTwo: 'two too many or two too few',
  countingString: 'the next number after one of the two',
  table: 'from another place in the table',
  tenSlip: 'ten too many or ten too few',
  keyingSlip: 'a key next to the right one, or a digit doubled or dropped',
  other: 'none of the usual causes',
};

/** The likeliest cause of a wrong answer, in words. */
export function causeText(fact: Fact, given: string | null, { name, operations }: ReadError): string {
  switch (name) {
    case 'otherOperation':
      return `the answer to ${others(fact, operations)}`;
    case 'operand':
      return neighbour(fact, Number(given));
    case 'cannotTell':
      return `can’t tell: the answer to ${others(fact, operations)}`;
    default:
      return plain[name];
  }
}

/** `the answer to 7 × 6`: the fact of the same row or column whose answer was given. */
function neighbour({ a, b }: Fact, given: number): string {
  const facts = [
    ...(a > 0 && given % a === 0 ? [{ text: `${a} × ${given / a}`, away: Math.abs(given / a - b) }] : []),
    ...(b > 0 && given % b === 0 ? [{ text: `${given / b} × ${b}`, away: Math.abs(given / b - a) }] : []),
  ].toSorted((x, y) => x.away - y.away);
  return facts[0] ? `the answer to ${facts[0].text}` : 'from the same row of the table';
}

/** Whether the look of a wrong answer speaks for a slip of the hand more than for anything else. */
export function looksLikeSlip({ name }: ReadError): boolean {
  return name === 'keyingSlip' || name === 'reversal';
}
