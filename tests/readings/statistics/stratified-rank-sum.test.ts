import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rankSum } from '../../../src/readings/statistics/rank-sum';
import {
  lowerOverOccasions,
  type Occasion,
  ranksApart,
} from '../../../src/readings/statistics/stratified-rank-sum';

const lower = (occasions: readonly Occasion[]) => lowerOverOccasions(occasions.map(ranksApart));

const values = (from: number, count: number): number[] =>
  Array.from({ length: count }, (_, at) => from + at * 10);
const times = fc.integer({ min: 300, max: 5000 });
const occasion: fc.Arbitrary<Occasion> = fc.record({
  some: fc.array(times, { maxLength: 8 }),
  others: fc.array(times, { maxLength: 20 }),
});

describe('low values over several occasions', () => {
  it('are all the less by chance the more occasions show them', () => {
    const one: Occasion = { some: values(500, 3), others: values(800, 12) };
    const chances = [1, 2, 4].map((times_) => lower(Array.from({ length: times_ }, () => one)));
    expect(chances[0]).toBeLessThan(0.01);
    expect(chances[1]).toBeLessThan(chances[0] ?? 0);
    expect(chances[2]).toBeLessThan(chances[1] ?? 0);
  });

  it('of one occasion are near the exact rank sum', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(times, { minLength: 14, maxLength: 24 }),
        fc.integer({ min: 5, max: 8 }),
        (all, few) => {
          const own = { some: all.slice(0, few), others: all.slice(few) };
          expect(Math.abs(lower([own]) - rankSum(own.some, own.others).pLess)).toBeLessThan(0.05);
        },
      ),
    );
  });

  it('turn round with their sign, and a unit changes nothing', () => {
    fc.assert(
      fc.property(fc.array(occasion, { minLength: 1, maxLength: 5 }), (occasions) => {
        const chance = lower(occasions);
        const turned = occasions.map(({ some, others }) => ({
          some: some.map((value) => -value),
          others: others.map((value) => -value),
        }));
        const inSeconds = occasions.map(({ some, others }) => ({
          some: some.map((value) => value / 1000),
          others: others.map((value) => value / 1000),
        }));
        expect(lower(inSeconds)).toBeCloseTo(chance, 9);
        if (chance < 1) expect(lower(turned)).toBeCloseTo(1 - chance, 6);
      }),
    );
  });

  it('an occasion without either kind says nothing', () => {
    const one: Occasion = { some: [500, 520], others: values(600, 9) };
    const empty: Occasion[] = [
      { some: [], others: values(1, 5) },
      { some: values(1, 5), others: [] },
    ];
    expect(lower([one, ...empty])).toBe(lower([one]));
    expect(lower(empty)).toBe(1);
    expect(lower([{ some: [7, 7], others: [7, 7, 7] }])).toBe(1);
  });
});
