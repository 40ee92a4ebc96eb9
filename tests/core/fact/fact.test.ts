import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeFact, type Operation, parseFact } from '../../../src/core/fact/fact';

const operation = fc.constantFrom<Operation>('add', 'sub', 'mul', 'div');
const number = fc.nat({ max: 144 });

describe('a fact', () => {
  test('has its answer worked out', () => {
    expect(makeFact('add', 9, 8)).toEqual({ id: 'add-9-8', op: 'add', a: 9, b: 8, answer: 17 });
    expect(makeFact('sub', 17, 8)).toEqual({ id: 'sub-17-8', op: 'sub', a: 17, b: 8, answer: 9 });
    expect(makeFact('mul', 7, 8)).toEqual({ id: 'mul-7-8', op: 'mul', a: 7, b: 8, answer: 56 });
    expect(makeFact('div', 56, 7)).toEqual({ id: 'div-56-7', op: 'div', a: 56, b: 7, answer: 8 });
  });

  test('is none where the answer is below zero, broken, or a division by zero', () => {
    expect(makeFact('sub', 3, 5)).toBeNull();
    expect(makeFact('div', 7, 2)).toBeNull();
    expect(makeFact('div', 4, 0)).toBeNull();
    expect(makeFact('div', 0, 0)).toBeNull();
  });

  test('zero shared out is zero', () => {
    expect(makeFact('div', 0, 7)?.answer).toBe(0);
  });

  test('is found again by its id', () => {
    fc.assert(
      fc.property(operation, number, number, (op, a, b) => {
        const fact = makeFact(op, a, b);
        fc.pre(fact !== null);
        expect(parseFact(fact?.id ?? '')).toEqual(fact);
      }),
    );
  });

  test('has an id that is safe in a path and in a subject token', () => {
    fc.assert(
      fc.property(operation, number, number, (op, a, b) => {
        expect(makeFact(op, a, b)?.id ?? 'none').toMatch(/^[a-z0-9-]+$/);
      }),
    );
  });
});

describe('an id that is not of a fact', () => {
  test.each([
    '',
    'mul',
    'mul-7',
    'mul-7-8-9',
    'mul-07-8',
    'mul-7-08',
    'mul--7-8',
    'mul-7.5-8',
    'pow-2-3',
    'MUL-7-8',
    'div-7-2',
    'div-7-0',
    'sub-3-5',
    'mul-7-8 ',
    'mul-1000-1',
    'copy-47',
  ])('"%s" names none', (id) => {
    expect(parseFact(id)).toBeNull();
  });

  test('no text whatever breaks the reading of an id', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const fact = parseFact(text);
        expect(fact === null || fact.id === text).toBe(true);
      }),
    );
  });
});
