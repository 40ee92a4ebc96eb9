import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Fact, makeFact, type Operation } from '../../../src/core/fact/fact';
import { factsOf, knownFact } from '../../../src/core/fact/fact-list';
import { writtenFact } from '../../../src/core/fact/written';
import type { Strategy } from '../../../src/core/strategy/strategy';
import { restsOn, strategiesFor, strategyFor } from '../../../src/core/strategy/strategy-for';
import { workOf } from '../../../src/core/strategy/work';
import { known } from '../known';
import { reckon, solve } from './reckon';

const operations = ['add', 'sub', 'mul', 'div'] satisfies Operation[];
const everyFact = operations.flatMap((op) => factsOf(op, 12));
const nobody = () => false;
const kindFor = (id: string, knows: readonly string[] = []) =>
  strategyFor(known(id), (fact) => knows.includes(fact.id)).kind;
const workFor = (id: string) => workOf(strategyFor(known(id), nobody));

const everyKind: Readonly<Record<Strategy['kind'], true>> = {
  none: true,
  turnAround: true,
  noneMore: true,
  oneMore: true,
  twoMore: true,
  double: true,
  twoFives: true,
  doubleAndOne: true,
  doubleBetween: true,
  makesTen: true,
  oneUnderTen: true,
  tenLessOne: true,
  fillTen: true,
  takeNone: true,
  takeAll: true,
  oneLess: true,
  twoLess: true,
  countUp: true,
  thinkPlus: true,
  upThroughTen: true,
  upToTen: true,
  half: true,
  nearHalf: true,
  giveOneBack: true,
  backThroughTen: true,
  noLots: true,
  oneLot: true,
  tenLots: true,
  doubled: true,
  halfOfTen: true,
  halveAndDouble: true,
  splitLots: true,
  lotsLess: true,
  shareNone: true,
  oneEach: true,
  allForOne: true,
  howManyTens: true,
  doubleThenTens: true,
  halved: true,
  thinkTimes: true,
};

/** The number a strategy comes to. */
function worthOf(strategy: Strategy): number | null {
  const work = workOf(strategy);
  return work.includes('□') ? solve(work) : reckon(work);
}

describe('the table', () => {
  test.each(operations)('has a way to every fact of %s, to 12s too', (op) => {
    const without = factsOf(op, 12).filter((fact) => strategiesFor(fact).length === 0);
    expect(without.map(writtenFact)).toEqual([]);
  });

  test.each(operations)('every way to every fact of %s comes to its answer', (op) => {
    const wrong = factsOf(op, 12).flatMap((fact) =>
      strategiesFor(fact)
        .filter((way) => worthOf(way) !== fact.answer)
        .map((way) => `${writtenFact(fact)}: ${way.kind}, ${workOf(way)}`),
    );
    expect(wrong).toEqual([]);
  });

  test('no way to a fact comes twice', () => {
    for (const fact of everyFact) {
      const ways = strategiesFor(fact).map((way) => JSON.stringify(way));
      expect(new Set(ways).size).toBe(ways.length);
    }
  });

  test('says none for a fact beyond the tool’s', () => {
    for (const fact of [
      makeFact('add', 14, 3),
      makeFact('mul', 13, 2),
      makeFact('sub', 40, 7),
      makeFact('div', 169, 13),
    ]) {
      if (!fact) throw new Error('these are facts');
      expect(strategyFor(fact, nobody)).toEqual({ kind: 'none' });
    }
    expect(workOf({ kind: 'none' })).toBe('');
  });

  test('every kind of strategy is some fact’s', () => {
    const kinds = new Set(everyFact.flatMap((fact) => strategiesFor(fact).map(({ kind }) => kind)));
    expect([...kinds, 'none'].toSorted()).toEqual(Object.keys(everyKind).toSorted());
  });
});

describe('among the ways to', () => {
  test.each([
    ['add-6-7', 'doubleAndOne', '6 + 6 + 1'],
    ['add-9-6', 'tenLessOne', '10 + 6 − 1'],
    ['add-8-5', 'fillTen', '8 + 2 + 3'],
    ['add-3-7', 'makesTen', '7 + 3'],
    ['add-5-3', 'doubleBetween', '4 + 4'],
    ['add-3-6', 'oneUnderTen', '3 + 7 − 1'],
    ['add-8-8', 'twoFives', '5 + 5 + 3 + 3'],
    ['add-1-7', 'oneMore', '7 + 1'],
    ['sub-13-5', 'backThroughTen', '13 − 3 − 2'],
    ['sub-13-8', 'upThroughTen', '2 + 3'],
    ['sub-15-9', 'giveOneBack', '15 − 10 + 1'],
    ['sub-14-7', 'half', '14 ÷ 2'],
    ['sub-10-4', 'upToTen', '4 + □ = 10'],
    ['sub-9-3', 'thinkPlus', '3 + □ = 9'],
    ['mul-9-7', 'lotsLess', '10 × 7 − 7'],
    ['mul-5-8', 'halveAndDouble', '10 × 4'],
    ['mul-7-5', 'halfOfTen', '10 × 7 ÷ 2'],
    ['mul-3-8', 'splitLots', '2 × 8 + 8'],
    ['mul-4-7', 'doubled', '2 × 2 × 7'],
    ['mul-2-6', 'doubled', '6 + 6'],
    ['mul-6-7', 'splitLots', '5 × 7 + 7'],
    ['mul-11-12', 'splitLots', '10 × 12 + 12'],
    ['mul-0-7', 'noLots', '0 × 7'],
    ['div-45-5', 'doubleThenTens', '2 × 45 ÷ 10'],
    ['div-18-2', 'halved', '18 ÷ 2'],
  ] as const)('%s is %s: %s', (id, kind, work) => {
    const found = strategiesFor(known(id)).find((one) => one.kind === kind);
    expect(found && workOf(found)).toBe(work);
  });
});

describe('which way is shown', () => {
  test('the turn-around once it is known, and only then', () => {
    expect(kindFor('mul-8-7', ['mul-7-8'])).toBe('turnAround');
    expect(strategyFor(known('mul-8-7'), ({ id }) => id === 'mul-7-8')).toEqual({
      kind: 'turnAround',
      sign: '×',
      a: 7,
      b: 8,
    });
    expect(kindFor('mul-8-7', ['mul-8-7'])).not.toBe('turnAround');
    expect(kindFor('add-1-7', ['add-7-1'])).toBe('oneMore');
  });

  test('the first whose own facts are known: seven eights by fives and twos, or from seven sevens', () => {
    const byFives = strategyFor(known('mul-7-8'), ({ id }) => ['mul-5-8', 'mul-2-8'].includes(id));
    expect(workOf(byFives)).not.toBe('');
    expect(restsOn(byFives).every(({ id }) => ['mul-5-8', 'mul-2-8'].includes(id))).toBe(true);
    const byDivision = strategyFor(known('div-28-4'), nobody);
    expect(byDivision.kind).toBe('halved');
    expect(kindFor('div-28-4', ['mul-4-7'])).toBe('thinkTimes');
    expect(kindFor('div-28-4', ['mul-7-4'])).toBe('thinkTimes');
  });

  test('a way that rests on nothing known is better than none', () => {
    expect(workFor('div-54-6')).toBe('6 × □ = 54');
    for (const fact of everyFact) expect(strategyFor(fact, nobody).kind).not.toBe('none');
    for (const fact of everyFact) expect(strategyFor(fact, nobody).kind).not.toBe('turnAround');
  });

  test('what a way rests on is known to the child, unless no way’s is', () => {
    fc.assert(
      fc.property(fc.constantFrom(...everyFact), fc.subarray(everyFact), (fact, all) => {
        const ids = new Set(all.map(({ id }) => id));
        const isKnown = ({ id }: Fact) => ids.has(id);
        const isReady = (way: Strategy) =>
          restsOn(way).every(({ op, a, b, id }) =>
            way.kind === 'turnAround' ? ids.has(id) : ids.has(id) || ids.has(`${op}-${b}-${a}`),
          );
        const shown = strategyFor(fact, isKnown);
        expect(isReady(shown) || !strategiesFor(fact).some(isReady)).toBe(true);
      }),
    );
  });

  test('no way rests on the fact itself', () => {
    for (const fact of everyFact) {
      for (const way of strategiesFor(fact)) {
        expect(restsOn(way).map(({ id }) => id)).not.toContain(fact.id);
      }
    }
  });
});

test('what a way rests on are facts of the tool', () => {
  for (const fact of everyFact) {
    for (const way of strategiesFor(fact)) {
      for (const { id } of restsOn(way)) expect(knownFact(id)).not.toBeNull();
    }
  }
});
