import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fact, type FactId, parseFact } from '../../../src/core/fact/fact';
import { factsOf, type Reach } from '../../../src/core/fact/fact-list';
import { isRightByAnother } from '../../../src/readings/errors/operations-giving';
import { keysTouch, type Pad } from '../../../src/readings/errors/pad';
import { type ErrorFlag, readError, type WrongAnswer } from '../../../src/readings/errors/read-error';
import { oracleOf } from './oracle';

const everyFact = (reach: Reach) =>
  (['add', 'sub', 'mul', 'div'] as const).flatMap((op) => factsOf(op, reach));

const plain = { before: null, pad: 'phone', reach: 9, firstKeyMs: 900 } as const;

function fact(id: FactId): Fact {
  const found = parseFact(id);
  if (found === null) throw new Error(`${id} is not a fact`);
  return found;
}

const read = (id: FactId, given: string | null, more: Partial<WrongAnswer> = {}) =>
  readError({ ...plain, fact: fact(id), given, ...more });

describe('every fact, every wrong answer from 0 to 199', () => {
  it.each([
    [9, 'phone', 390],
    [9, 'calculator', 390],
    [9, 'keyboard', 390],
    [12, 'phone', 525],
  ] as const)('to %is on a pad in %s order, as the definitions say', (reach, pad, count) => {
    const facts = everyFact(reach);
    expect(facts).toHaveLength(count);
    const before = 12;
    let different = 0;
    for (const of of facts) {
      const oracle = oracleOf(of, reach, pad, before);
      for (let number = 0; number <= 199; number += 1) {
        if (number === of.answer) continue;
        const ours = readError({ ...plain, pad, reach, before, fact: of, given: String(number) });
        const flags = [...ours.flags].sort().join(' ');
        const expected = [...oracle.flagsOf(number)].sort().join(' ');
        if (flags !== expected || ours.name !== oracle.nameOf(number)) {
          different += 1;
          expect({ fact: of.id, number, flags, name: ours.name }).toEqual({
            fact: of.id,
            number,
            flags: expected,
            name: oracle.nameOf(number),
          });
        }
      }
    }
    expect(different).toBe(0);
  });
});

describe('errors by name', () => {
  it('7 × 8 has fourteen operand alternatives', () => {
    const operand = Array.from({ length: 200 }, (_, number) => number).filter(
      (number) => number !== 56 && read('mul-7-8', String(number)).flags.has('operand'),
    );
    expect(operand).toEqual([14, 16, 21, 24, 28, 32, 35, 40, 42, 48, 49, 63, 64, 72]);
  });

  it('an operand two away is close, three away is not', () => {
    expect(read('mul-7-8', '42').flags.has('closeOperand')).toBe(true);
    expect(read('mul-7-8', '35').flags.has('closeOperand')).toBe(false);
  });

  it.each<[FactId, string, string]>([
    ['mul-7-8', '65', 'reversal'],
    ['mul-7-8', '78', 'runTogether'],
    ['mul-7-8', '15', 'otherOperation'],
    ['add-7-8', '56', 'otherOperation'],
    ['mul-7-8', '48', 'operand'],
    ['mul-7-8', '57', 'offByOne'],
    ['mul-7-8', '58', 'offByTwo'],
    ['mul-7-8', '45', 'table'],
    ['mul-7-8', '66', 'tenSlip'],
    ['mul-7-8', '59', 'keyingSlip'],
    ['mul-7-8', '566', 'keyingSlip'],
    ['mul-7-8', '97', 'other'],
    ['mul-6-1', '1', 'operandNamed'],
    ['add-7-8', '9', 'countingString'],
    ['sub-15-7', '9', 'offByOne'],
    ['div-56-7', '49', 'otherOperation'],
    ['div-56-7', '7', 'operandNamed'],
  ])('%s answered %s is called %s', (id, given, name) => {
    expect(read(id, given).name).toBe(name);
  });

  it('all flags are kept beside the name', () => {
    // On the pad 9 touches 6.
    expect(read('mul-7-8', '59').flags).toEqual(new Set<ErrorFlag>(['nonTable', 'keyingSlip']));
    expect(read('mul-7-8', '48').flags).toEqual(new Set<ErrorFlag>(['operand', 'closeOperand', 'table']));
  });

  it.each<[FactId, string]>([
    ['mul-5-0', '5'],
    ['sub-2-2', '4'],
    ['div-2-2', '4'],
    ['add-0-5', '0'],
  ])('%s answered %s can come of two operations: cannot tell', (id, given) => {
    const error = read(id, given);
    expect(error.name).toBe('cannotTell');
    expect(error.operations.length).toBeGreaterThan(1);
    expect(error.flags.has('otherOperation')).toBe(true);
  });

  it('a right answer to 2 + 2, 2 × 2 or with a zero does not show the operation; 7 × 8 does', () => {
    expect(
      ['add-2-2', 'mul-2-2', 'sub-5-0', 'div-0-5'].map((id) => isRightByAnother(fact(id as FactId))),
    ).toEqual([true, true, true, true]);
    expect(isRightByAnother(fact('mul-7-8'))).toBe(false);
  });

  it('nothing given is an omission and nothing else', () => {
    for (const given of [null, '']) {
      const error = read('mul-7-8', given, { firstKeyMs: 100 });
      expect(error).toEqual({ flags: new Set(['omission']), name: 'omission', operations: [] });
    }
  });

  it('a first key under 300 ms is a rapid guess whatever was keyed; at 300 ms it is not', () => {
    expect(read('mul-7-8', '48', { firstKeyMs: 299.9 }).name).toBe('rapidGuess');
    expect(read('mul-7-8', '48', { firstKeyMs: 299.9 }).flags.has('operand')).toBe(true);
    expect(read('mul-7-8', '48', { firstKeyMs: 300 }).name).toBe('operand');
    expect(read('mul-7-8', '48', { firstKeyMs: null }).name).toBe('operand');
  });

  it('the answer of the card before is kept as a flag and never names', () => {
    const error = read('mul-7-8', '97', { before: 97 });
    expect(error.flags.has('perseveration')).toBe(true);
    expect(error.name).toBe('other');
  });

  it('digits count as they were keyed: 02 for 20 is a reversal, 2 for 20 is a digit dropped', () => {
    expect(read('mul-4-5', '02').name).toBe('reversal');
    expect(read('mul-4-5', '2').flags.has('reversal')).toBe(false);
    expect(read('mul-4-5', '2').flags.has('keyingSlip')).toBe(true);
  });

  it('12 × 7 belongs to the table of 7 × 8 only where the tables go to 12', () => {
    expect(read('mul-7-8', '84').flags.has('operand')).toBe(false);
    expect(read('mul-7-8', '84', { reach: 12 }).flags.has('operand')).toBe(true);
  });
});

describe('keys that touch', () => {
  it('share a side, either way round, and never touch themselves', () => {
    const digit = fc.constantFrom(...'0123456789');
    fc.assert(
      fc.property(
        fc.constantFrom<Pad>('phone', 'calculator', 'keyboard'),
        digit,
        digit,
        (pad, one, other) => {
          expect(keysTouch(pad, one, other)).toBe(keysTouch(pad, other, one));
          expect(keysTouch(pad, one, one)).toBe(false);
        },
      ),
    );
  });

  it('0 lies under 8 in phone order, under 2 in calculator order, beside 9 and under 1 and 2 on a keyboard', () => {
    const beside0 = (pad: Pad) => [...'123456789'].filter((key) => keysTouch(pad, key, '0')).join('');
    expect(beside0('phone')).toBe('8');
    expect(beside0('calculator')).toBe('2');
    expect(beside0('keyboard')).toBe('129');
  });

  it('keys that meet at a corner do not touch', () => {
    expect(keysTouch('phone', '1', '5')).toBe(false);
    expect(keysTouch('phone', '5', '8')).toBe(true);
  });
});
