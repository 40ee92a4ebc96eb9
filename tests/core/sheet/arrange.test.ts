import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { apart, arrange, fewestAlike } from '../../../src/core/sheet/arrange';
import { makeDice } from '../../../src/core/sheet/dice';
import { known } from '../known';

const facts = (...ids: string[]) => ids.map(known);
const arranged = (cards: readonly Fact[], seed: number) => arrange(cards, makeDice(seed));

/** Counted anew from the cards as they lie. */
function faultsOf(cards: readonly Fact[]) {
  const tooClose = cards.filter((card, i) => cards.slice(Math.max(0, i - 3), i).includes(card)).length;
  const alike = cards.filter((card, i) => i > 0 && cards[i - 1]?.answer === card.answer).length;
  return { tooClose, alike };
}

/** The best order there is, by trying them all: too close first, then alike. */
function bestOf(cards: readonly Fact[]): { tooClose: number; alike: number } {
  let best = { tooClose: Number.POSITIVE_INFINITY, alike: Number.POSITIVE_INFINITY };
  const lay = (laid: readonly Fact[], rest: readonly Fact[]) => {
    const faults = faultsOf(laid);
    if ((faults.tooClose - best.tooClose || faults.alike - best.alike) >= 0) return;
    if (rest.length === 0) best = faults;
    for (const card of new Set(rest)) lay([...laid, card], rest.toSpliced(rest.indexOf(card), 1));
  };
  lay([], cards);
  return best;
}

const fewSums = factsOf('add').filter((fact) => fact.answer >= 9 && fact.answer <= 12 && fact.a >= 6);
const fewCards = fc
  .tuple(fc.subarray(fewSums, { minLength: 3, maxLength: 7 }), fc.nat({ max: 2 }))
  .map(([some, again]) => [...some, ...some.slice(0, again)]);

describe('an order of cards', () => {
  test('holds each card as often as it was given', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...factsOf('mul')), { maxLength: 100 }),
        fc.integer(),
        (cards, seed) => {
          const ids = (list: readonly Fact[]) => list.map((fact) => fact.id).toSorted();
          expect(ids(arranged(cards, seed).facts)).toEqual(ids(cards));
        },
      ),
    );
  });

  test('says truly where it had to give way', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...fewSums), { maxLength: 40 }), fc.integer(), (cards, seed) => {
        const { facts: order, tooClose, alike } = arranged(cards, seed);
        expect({ tooClose, alike }).toEqual(faultsOf(order));
      }),
    );
  });

  test('is as good as the best of all orders, wherever one keeps facts apart', () => {
    fc.assert(
      fc.property(fewCards, fc.integer(), (cards, seed) => {
        const best = bestOf(cards);
        fc.pre(best.tooClose === 0);
        const { tooClose, alike } = arranged(cards, seed);
        expect({ tooClose, alike }).toEqual(best);
      }),
      { numRuns: 1000 },
    );
  });

  test('differs from seed to seed', () => {
    const cards = factsOf('mul').slice(0, 25);
    const orders = new Set(
      Array.from({ length: 100 }, (_, seed) =>
        arranged(cards, seed)
          .facts.map((fact) => fact.id)
          .join(),
      ),
    );
    expect(orders.size).toBe(100);
  });

  test('of no cards is empty', () => {
    expect(arranged([], 1)).toEqual({ facts: [], tooClose: 0, alike: 0 });
  });
});

describe('too few facts', () => {
  test('four facts come round in turn', () => {
    const four = facts('mul-2-3', 'mul-2-4', 'mul-2-5', 'mul-2-6');
    const cards = [...four, ...four, ...four, ...four, ...four, ...four].concat(four.slice(0, 1));
    const { tooClose, facts: order } = arranged(cards, 7);
    expect([order.length, tooClose, apart]).toEqual([25, 0, 4]);
  });

  test('two facts alternate', () => {
    const [six, eight] = [known('mul-2-3'), known('mul-2-4')];
    const { facts: order } = arranged([six, eight, six, eight, six], 3);
    expect(order).toEqual([six, eight, six, eight, six]);
  });

  test('one fact alone is asked again and again', () => {
    const card = known('mul-7-8');
    expect(arranged([card, card, card], 1)).toEqual({ facts: [card, card, card], tooClose: 2, alike: 2 });
  });
});

describe('equal answers', () => {
  test('are kept apart when they are just half of the cards', () => {
    const zeros = facts('mul-0-2', 'mul-0-3', 'mul-0-4', 'mul-0-5', 'mul-0-6');
    const others = facts('mul-1-2', 'mul-1-3', 'mul-1-4', 'mul-1-5');
    for (let seed = 0; seed < 200; seed++) {
      expect(arranged([...zeros, ...others], seed)).toMatchObject({ tooClose: 0, alike: 0 });
    }
  });

  test('that are too many follow each other no more often than they must', () => {
    const tens = factsOf('add').filter((fact) => fact.answer === 10);
    const cards = [...tens, ...facts('add-2-2', 'add-3-3', 'add-4-4')];
    expect(fewestAlike(cards)).toBe(5);
    for (let seed = 0; seed < 50; seed++) expect(arranged(cards, seed).alike).toBe(5);
  });

  test('the least number is none while no answer has more than half', () => {
    expect(fewestAlike([])).toBe(0);
    expect(fewestAlike(facts('mul-2-6', 'mul-3-4'))).toBe(1);
    expect(fewestAlike(facts('mul-2-6', 'mul-3-4', 'mul-2-2'))).toBe(0);
  });
});
