import { describe, expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { writtenFact } from '../../../src/core/fact/written';
import { restsOn, strategiesFor } from '../../../src/core/strategy/strategy-for';
import { workOf } from '../../../src/core/strategy/work';
import { known } from '../known';
import { reckon, solve } from './reckon';

const everyFact = (['add', 'sub', 'mul', 'div'] satisfies Operation[]).flatMap((op) => factsOf(op, 12));
const worksOf = (id: string) => strategiesFor(known(id)).map(workOf);

describe('the reckoner these tests go by', () => {
  test.each([
    ['7', 7],
    ['5 × 8 + 2 × 8', 56],
    ['10 × 7 − 7', 63],
    ['13 − 3 − 2', 8],
    ['14 ÷ 2 + 1', 8],
    ['10 × 7 ÷ 2', 35],
    ['56 ÷ 2 ÷ 2 ÷ 2', 7],
    ['2 + 3 × 4', 14],
    ['0 × 7', 0],
  ])('%s is %i', (text, value) => {
    expect(reckon(text)).toBe(value);
  });

  test.each(['', 'two', '5 +', '5 ^ 2', '5 × x'])('%s is no number', (text) => {
    expect(reckon(text)).toBeNaN();
  });

  test('solves a box for the one number that fits, and for none otherwise', () => {
    expect(solve('7 × □ = 56')).toBe(8);
    expect(solve('4 + □ = 10')).toBe(6);
    expect(solve('0 × □ = 0')).toBeNull();
    expect(solve('7 × □ = 55')).toBeNull();
  });
});

describe('the written work', () => {
  test('is numbers and signs alone', () => {
    for (const fact of everyFact) {
      for (const way of strategiesFor(fact)) expect(workOf(way)).toMatch(/^(\d+|□)( [+−×÷=] (\d+|□))*$/);
    }
  });

  test('is other than the fact as it stands, but where that is drawn: doubles, tens and what fills a ten', () => {
    const drawn = new Set([
      'double',
      'makesTen',
      'tenLots',
      'takeAll',
      'oneLess',
      'oneMore',
      'half',
      'halved',
    ]);
    const same = everyFact.flatMap((fact) =>
      strategiesFor(fact)
        .filter((way) => workOf(way) === writtenFact(fact))
        .map(({ kind }) => kind)
        .filter((kind) => !drawn.has(kind)),
    );
    expect([...new Set(same)].toSorted()).toEqual(['howManyTens', 'noLots', 'oneEach', 'shareNone']);
  });

  test('of a fact with several ways gives them all', () => {
    expect(worksOf('mul-7-8')).toEqual([
      '8 × 7',
      '2 × 2 × 2 × 7',
      '10 × 7 − 2 × 7',
      '5 × 8 + 2 × 8',
      '7 × 7 + 7',
    ]);
    expect(worksOf('add-8-9')).toEqual(['9 + 8', '10 + 8 − 1', '8 + 8 + 1', '9 + 1 + 7']);
    expect(worksOf('sub-15-8')).toEqual(['16 ÷ 2 − 1', '2 + 5', '15 − 5 − 3']);
    expect(worksOf('div-32-8')).toEqual(['8 × □ = 32', '32 ÷ 2 ÷ 2 ÷ 2']);
  });
});

describe('what a way rests on', () => {
  test.each([
    ['mul-8-7', 'turnAround', ['mul-7-8']],
    ['add-6-7', 'doubleAndOne', ['add-6-6']],
    ['add-3-6', 'oneUnderTen', ['add-3-7']],
    ['sub-13-6', 'nearHalf', ['add-6-6']],
    ['sub-9-4', 'thinkPlus', ['add-4-5']],
    ['sub-10-3', 'upToTen', ['add-3-7']],
    ['mul-4-7', 'doubled', ['mul-2-7']],
    ['mul-2-7', 'doubled', []],
    ['mul-7-9', 'splitLots', ['mul-5-9', 'mul-2-9']],
    ['mul-6-9', 'splitLots', ['mul-5-9']],
    ['mul-9-6', 'lotsLess', []],
    ['div-56-7', 'thinkTimes', ['mul-7-8']],
    ['add-8-5', 'fillTen', []],
  ] as const)('%s by %s', (id, kind, facts) => {
    const way = strategiesFor(known(id)).find((one) => one.kind === kind);
    expect(way && restsOn(way).map((fact) => fact.id)).toEqual(facts);
  });

  test('the easier way stands before the harder one: ten less one before twelve lots', () => {
    expect(strategiesFor(known('mul-12-9')).map(({ kind }) => kind)).toEqual([
      'turnAround',
      'lotsLess',
      'splitLots',
    ]);
  });
});
