import { describe, expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { writtenFact } from '../../../src/core/fact/written';
import { strategiesFor } from '../../../src/core/strategy/strategy-for';
import { strategyLine } from '../../../src/core/strategy/words';
import { workOf } from '../../../src/core/strategy/work';
import { known } from '../known';

const everyFact = (['add', 'sub', 'mul', 'div'] satisfies Operation[]).flatMap((op) => factsOf(op, 12));
const linesOf = (id: string) => strategiesFor(known(id)).map(strategyLine);
const all = everyFact.flatMap((fact) =>
  strategiesFor(fact).map((way) => ({ fact, way, line: strategyLine(way) })),
);

describe('a line for the child', () => {
  test('has at most six words, and a large letter and an end', () => {
    const wrong = all.filter(
      ({ line }) => !line || line.split(' ').length > 6 || !/^[A-Z\d].*[.?]$/.test(line),
    );
    expect(wrong.map(({ fact, line }) => `${writtenFact(fact)}: ${line}`)).toEqual([]);
  });

  test('names no number but the fact’s own and those it works with', () => {
    const numbersIn = (text: string | null) => (text?.match(/\d+/g) ?? []).map(Number);
    const wrong = all.filter(({ fact, line, way }) => {
      const own = new Set([fact.a, fact.b, ...numbersIn(workOf(way))]);
      return numbersIn(line).some((number) => !own.has(number));
    });
    expect(wrong.map(({ fact, line }) => `${writtenFact(fact)}: ${line}`)).toEqual([]);
  });

  test('never gives the answer where it asks what makes it', () => {
    const asking = all.filter(({ line }) => line?.endsWith('?'));
    expect(asking.length).toBeGreaterThan(100);
    for (const { fact, line } of asking) {
      const isNamed = (line?.match(/\d+/g) ?? []).map(Number).includes(fact.answer);
      expect(isNamed && fact.answer !== fact.b && fact.answer !== fact.a).toBe(false);
    }
  });

  test.each([
    ['add-6-7', 'Double 6 and one more.'],
    ['add-9-6', 'Ten and 6, less one.'],
    ['add-8-5', '8 to ten, then 3 more.'],
    ['add-3-6', 'One less than 3 + 7.'],
    ['sub-13-8', '8 to ten, then 3 more.'],
    ['sub-13-5', 'Back to ten, then 2.'],
    ['sub-13-6', 'Half of 12, and one.'],
    ['mul-9-7', 'Ten 7s, less one 7.'],
    ['mul-5-8', 'Halve 8: ten 4s.'],
    ['mul-8-7', 'The same as 7 × 8.'],
    ['mul-4-7', 'Double 7, double again.'],
    ['mul-7-8', 'Five 8s and two 8s.'],
    ['div-56-7', '7 times what makes 56?'],
    ['div-28-4', 'Half of half of 28.'],
  ])('%s: “%s” is among its lines', (id, line) => {
    expect(linesOf(id)).toContain(line);
  });
});

test('none has no line', () => {
  expect(strategyLine({ kind: 'none' })).toBeNull();
});
