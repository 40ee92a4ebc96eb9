import type { Fact } from '../../../src/core/fact/fact';

// The definitions again, as sets of numbers built up fact by fact, to hold the predicates against.

const phone: readonly string[] = ['8', '24', '135', '26', '157', '2468', '359', '48', '5790', '68'];
const calculator: readonly string[] = ['2', '24', '1350', '26', '157', '2468', '359', '48', '579', '68'];
// The row 1 to 9 and 0, and the number block above a wide 0.
const keyboard: readonly string[] = [
  '129',
  '240',
  '1350',
  '246',
  '1357',
  '24668',
  '3579',
  '468',
  '5799',
  '680',
];
const beside = { phone, calculator, keyboard };

export function oracleOf(fact: Fact, reach: 9 | 12, pad: keyof typeof beside, before: number) {
  const { a, b, op, answer } = fact;
  const range: number[] = [];
  for (let x = Math.min(a, b, 2); x <= Math.max(a, b, reach); x += 1) range.push(x);

  const otherResults: number[] = [];
  if (op !== 'add') otherResults.push(a + b);
  if (op !== 'sub') otherResults.push(a - b);
  if (op !== 'mul') otherResults.push(a * b);
  if (op !== 'div' && b !== 0 && a % b === 0) otherResults.push(a / b);

  const products = new Set<number>();
  for (const x of range) for (const y of range) products.add(x * y);
  const operand = new Set<number>();
  const closeOperand = new Set<number>();
  if (op === 'mul') {
    for (const x of range) {
      operand.add(a * x).add(x * b);
      if (x >= b - 2 && x <= b + 2) closeOperand.add(a * x);
      if (x >= a - 2 && x <= a + 2) closeOperand.add(x * b);
    }
  }

  const truth = answer.toString();
  const slips = new Set<string>();
  for (let at = 0; at < truth.length; at += 1) {
    const [head, key, rest] = [truth.substring(0, at), truth[at] ?? '', truth.substring(at + 1)];
    for (const near of beside[pad][Number(key)] ?? '') slips.add(head + near + rest);
    slips.add(head + key + key + rest);
    if (truth.length > 1) slips.add(head + rest);
  }

  const flagsOf = (r: number) => {
    const flags = new Set<string>();
    const mark = (flag: string, holds: boolean) => holds && flags.add(flag);
    const digits = r.toString();
    mark('reversal', digits.split('').reverse().join('') === truth);
    mark('runTogether', r.toString() === a.toString() + b.toString());
    mark('otherOperation', otherResults.includes(r));
    mark('operandNamed', [a, b].includes(r));
    mark('operand', operand.has(r));
    mark('closeOperand', closeOperand.has(r));
    mark('offByOne', [answer - 1, answer + 1].includes(r));
    mark('offByTwo', [answer - 2, answer + 2].includes(r));
    mark('countingString', op === 'add' && [a + 1, b + 1].includes(r));
    mark('table', op === 'mul' && products.has(r));
    mark('nonTable', op === 'mul' && !products.has(r));
    mark('tenSlip', [answer - 10, answer + 10].includes(r));
    mark('keyingSlip', slips.has(digits));
    mark('perseveration', r === before);
    return flags;
  };

  const nameOf = (r: number) => {
    const flags = flagsOf(r);
    if (flags.has('reversal')) return 'reversal';
    if (flags.has('runTogether')) return 'runTogether';
    const ways = otherResults.filter((result) => result === r).length;
    if (ways > 0) return ways === 1 ? 'otherOperation' : 'cannotTell';
    if (r === a || r === b) return 'operandNamed';
    if (operand.has(r)) return 'operand';
    if (Math.abs(r - answer) < 3) return Math.abs(r - answer) === 1 ? 'offByOne' : 'offByTwo';
    if (flags.has('countingString')) return 'countingString';
    if (flags.has('table')) return 'table';
    if (r + 10 === answer || answer + 10 === r) return 'tenSlip';
    return slips.has(digitsOf(r)) ? 'keyingSlip' : 'other';
  };
  return { flagsOf, nameOf };
}

const digitsOf = (r: number) => `${r}`;
