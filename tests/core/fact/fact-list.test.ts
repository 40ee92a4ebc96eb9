import { describe, expect, test } from 'vitest';
import { makeFact, type Operation } from '../../../src/core/fact/fact';
import { factOfPair, factsOf, inverse, isBasic, knownFact, pairOf } from '../../../src/core/fact/fact-list';

const operations: readonly Operation[] = ['add', 'sub', 'mul', 'div'];
const numbers = Array.from({ length: 200 }, (_, i) => i);

describe('the facts of an operation', () => {
  test.each(operations)('%s: none comes twice', (op) => {
    const ids = factsOf(op, 12).map((fact) => fact.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  // Told anew from the two operands, without the pair behind a fact.
  const isBasicBy: Record<Operation, (a: number, b: number) => boolean> = {
    add: (a, b) => a <= 9 && b <= 9,
    sub: (a, b) => b <= 9 && a - b >= 0 && a - b <= 9,
    mul: (a, b) => a <= 9 && b <= 9,
    div: (a, b) => b >= 1 && b <= 9 && a % b === 0 && a / b <= 9,
  };

  test.each(operations)('%s: exactly those whose parts are one digit', (op) => {
    const expected = numbers
      .flatMap((a) => numbers.slice(0, 20).map((b) => [a, b] as const))
      .filter(([a, b]) => isBasicBy[op](a, b))
      .map(([a, b]) => `${op}-${a}-${b}`);
    const found = factsOf(op).map((fact) => fact.id as string);
    expect(found.toSorted()).toEqual(expected.toSorted());
  });

  test('the option to 12s leaves + and − as they are', () => {
    expect(factsOf('add', 12)).toEqual(factsOf('add'));
    expect(factsOf('sub', 12)).toEqual(factsOf('sub'));
  });

  test('the option to 12s adds what has a 10, an 11 or a 12', () => {
    const added = factsOf('mul', 12).filter((fact) => !isBasic(fact.id));
    expect(added.every((fact) => fact.a > 9 || fact.b > 9)).toBe(true);
    expect(added).toHaveLength(69);
    expect(factsOf('div', 12).map((fact) => fact.id)).toEqual(
      expect.arrayContaining(['div-144-12', 'div-132-11', 'div-120-12', 'div-24-2', 'div-0-12', 'div-12-1']),
    );
  });
});

describe('the pair behind a fact', () => {
  test('is its addends or factors, the second as it stands', () => {
    expect(factOfPair('sub', 9, 8)?.id).toBe('sub-17-8');
    expect(factOfPair('div', 8, 7)?.id).toBe('div-56-7');
    expect(factOfPair('div', 8, 0)).toBeNull();
  });

  test.each(operations)('%s: gives the fact back', (op) => {
    for (const fact of factsOf(op, 12)) expect(factOfPair(op, ...pairOf(fact))).toEqual(fact);
  });

  test('is the same for a fact and the one that takes it back', () => {
    for (const op of operations) {
      for (const fact of factsOf(op)) {
        const back = factOfPair(inverse[op], ...pairOf(fact));
        expect(back === null || inverse[back.op] === op).toBe(true);
        if (back) expect(pairOf(back)).toEqual(pairOf(fact));
      }
    }
  });
});

describe('a fact of the tool', () => {
  test('is found by its id, up to 12s', () => {
    expect(knownFact('mul-12-12')?.answer).toBe(144);
    expect(knownFact('add-9-9')).toEqual(makeFact('add', 9, 9));
  });

  test('is not just any fact', () => {
    expect(makeFact('mul', 13, 2)).not.toBeNull();
    for (const id of ['mul-13-2', 'add-10-1', 'sub-20-3', 'div-26-2', 'div-4-0', 'nonsense', '']) {
      expect(knownFact(id)).toBeNull();
    }
  });

  test('is basic up to 9s', () => {
    expect(isBasic('mul-9-9')).toBe(true);
    expect(isBasic('div-81-9')).toBe(true);
    expect(isBasic('sub-18-9')).toBe(true);
    expect(isBasic('mul-10-2')).toBe(false);
    expect(isBasic('div-20-2')).toBe(false);
    expect(isBasic('div-20-10')).toBe(false);
  });
});
