import { describe, expect, test } from 'vitest';
import { type Operation, parseFact } from '../../src/core/fact/fact';
import { factsOf } from '../../src/core/fact/fact-list';
import { defaultOrder } from '../../src/core/set/teaching-sets';

const taughtBy = (op: Operation, reach: 9 | 12 = 9) =>
  new Set<string>(
    defaultOrder(op, reach)
      .filter((set) => set.kind === 'group')
      .flatMap((set) => set.facts),
  );
const upTo = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
const pairs = (xs: readonly number[], ys: readonly number[]) =>
  xs.flatMap((x) => ys.map((y) => [x, y] as const));

// Counts: recomputed exactly outside this project from the definitions of the four tables.
describe('the facts are as many as there are', () => {
  test('100 sums, 100 differences, 100 products and 90 quotients make 390', () => {
    const counts = (['add', 'sub', 'mul', 'div'] as const).map((op) => factsOf(op).length);
    expect(counts).toEqual([100, 100, 100, 90]);
    expect(counts.reduce((sum, count) => sum + count)).toBe(390);
  });

  test.each([
    ['2 to 9', 2, 9, 64, 36],
    ['2 to 12', 2, 12, 121, 66],
    ['0 to 12', 0, 12, 169, 91],
  ])('products of %s: %i to %i gives %i, %i without turn-arounds', (_, from, to, ordered, unordered) => {
    const facts = factsOf('mul', 12).filter(({ a, b }) => Math.min(a, b) >= from && Math.max(a, b) <= to);
    expect(facts).toHaveLength(ordered);
    expect(facts.filter(({ a, b }) => a <= b)).toHaveLength(unordered);
  });

  test('products of 2 to 9 are 31 different numbers', () => {
    const products = factsOf('mul').filter(({ a, b }) => a >= 2 && b >= 2);
    expect(new Set(products.map((fact) => fact.answer)).size).toBe(31);
  });
});

// Common Core State Standards for Mathematics (2010), 2.OA.B.2: "know from memory all sums of two one-digit
// numbers"; 3.OA.C.7: "know from memory all products of two one-digit numbers".
describe('the teaching groups cover what is to be known from memory', () => {
  test.each([
    ['2.OA.B.2, sums', 'add'],
    ['3.OA.C.7, products', 'mul'],
  ] as const)('%s of two one-digit numbers', (_, op) => {
    const wanted = pairs(upTo(0, 9), upTo(0, 9)).map(([a, b]) => `${op}-${a}-${b}`);
    expect(wanted.filter((id) => !taughtBy(op).has(id))).toEqual([]);
  });

  // The same standards ask for fluency, not memory, with the subtractions and divisions that belong to them.
  test('and the differences and quotients that belong to them', () => {
    const sums = pairs(upTo(0, 9), upTo(0, 9)).map(([a, b]) => `sub-${a + b}-${b}`);
    const products = pairs(upTo(0, 9), upTo(1, 9)).map(([a, b]) => `div-${a * b}-${b}`);
    expect(sums.filter((id) => !taughtBy('sub').has(id))).toEqual([]);
    expect(products.filter((id) => !taughtBy('div').has(id))).toEqual([]);
  });
});

// National curriculum in England: mathematics programmes of study (2013, in force from 2014): the 2, 5 and 10
// multiplication tables in year 2, the 3, 4 and 8 in year 3, all up to 12 × 12 by year 4.
describe('England’s tables', () => {
  test('up to 12 × 12 are all taught with the option to 12s, and the divisions that go with them', () => {
    const wanted = pairs(upTo(1, 12), upTo(1, 12));
    expect(wanted.filter(([a, b]) => !taughtBy('mul', 12).has(`mul-${a}-${b}`))).toEqual([]);
    expect(wanted.filter(([a, b]) => !taughtBy('div', 12).has(`div-${a * b}-${b}`))).toEqual([]);
  });

  test.each([
    ['mul', 'times-'],
    ['div', 'divide-by-'],
  ] as const)('stand in the order of the years: %s', (op, prefix) => {
    const order = defaultOrder(op, 12).map((set) => set.id);
    const places = (tables: readonly number[]) => tables.map((n) => order.indexOf(prefix + n));
    const [year2, year3, year4] = [places([2, 5, 10]), places([3, 4, 8]), places([6, 7, 9, 11, 12])];
    expect([...year2, ...year3, ...year4]).not.toContain(-1);
    expect(Math.max(...year2)).toBeLessThan(Math.min(...year3));
    expect(Math.max(...year3)).toBeLessThan(Math.min(...year4));
  });
});

describe('the orders that are taught', () => {
  // Kling & Bay-Williams 2015: 2, 5, 10, then 0, 1, squares, then the facts derived from them.
  test('times: 2, 5, 10, then 0 and 1, squares, then the derived ones', () => {
    const order = defaultOrder('mul', 12).map((set) => set.id);
    const foundations = ['times-2', 'times-5', 'times-10', 'times-0-and-1', 'squares'];
    const places = foundations.map((id) => order.indexOf(id));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((x, y) => x - y));
    const derived = [3, 4, 6, 7, 8, 9].map((n) => order.indexOf(`times-${n}`));
    expect(Math.min(...derived)).toBeGreaterThan(Math.max(...places));
  });

  // Thornton 1978; Steinberg 1985 (from memory): 0, 1, 2, doubles, partners of ten, near doubles, making ten.
  test('plus: 0 and 1, 2, doubles, partners of ten, near doubles, making ten', () => {
    const order = defaultOrder('add').map((set) => set.id);
    const taught = ['plus-0-and-1', 'plus-2', 'doubles', 'makes-ten', 'near-doubles', 'plus-9', 'past-ten'];
    const places = taught.map((id) => order.indexOf(id));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((x, y) => x - y));
  });
});

test('every id of a set is the id of a fact', () => {
  for (const op of ['add', 'sub', 'mul', 'div'] as const) {
    for (const id of taughtBy(op, 12)) expect(parseFact(id)?.id).toBe(id);
  }
});
