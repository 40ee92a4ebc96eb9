import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cardTime, fitRound, roundTime } from '../../../src/core/round/fit-round';
import { countCards } from '../../../src/core/round/rehearse';

const room = fc.record({
  fresh: fc.integer({ min: 0, max: 8 }),
  known: fc.integer({ min: 0, max: 9 }),
  budgetMs: fc.integer({ min: 0, max: 1_200_000 }),
  mostCards: fc.integer({ min: 1, max: 250 }),
  cardMs: fc.integer({ min: 1500, max: 15_000 }),
});

describe('a round', () => {
  test('never takes more than its time or its cards', () => {
    fc.assert(
      fc.property(room, (given) => {
        const size = fitRound(given);
        if (!size) return;
        expect(roundTime(size.fresh, given.known, size.depth, given.cardMs)).toBeLessThanOrEqual(
          given.budgetMs,
        );
        expect(countCards(size.fresh, given.known, size.depth)).toBeLessThanOrEqual(given.mostCards);
        expect(size.fresh).toBeLessThanOrEqual(given.fresh);
        expect(size.depth).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  test('is none only where not even one new fact fits', () => {
    fc.assert(
      fc.property(room, (given) => {
        if (given.fresh === 0 || fitRound(given)) return;
        const isTooLong = roundTime(1, given.known, 1, given.cardMs) > given.budgetMs;
        expect(isTooLong || countCards(1, given.known, 1) > given.mostCards).toBe(true);
      }),
    );
  });

  test('with more time is never smaller', () => {
    fc.assert(
      fc.property(room, fc.nat(300_000), (given, moreMs) => {
        const size = fitRound(given);
        const longer = fitRound({ ...given, budgetMs: given.budgetMs + moreMs });
        if (!size) return;
        expect(longer?.fresh).toBeGreaterThanOrEqual(size.fresh);
        if (longer?.fresh === size.fresh) expect(longer.depth).toBeGreaterThanOrEqual(size.depth);
      }),
    );
  });

  const four = { fresh: 4, known: 9, mostCards: 300, cardMs: 4000 };

  test('keeps the nine known ones where there is time: four new facts are 216 cards', () => {
    expect(fitRound({ ...four, budgetMs: 216 * 4000 + 40_000 })).toEqual({ fresh: 4, depth: 9 });
  });

  test('in seven minutes gives up known ones before new ones', () => {
    expect(fitRound({ ...four, budgetMs: 420_000 })).toEqual({ fresh: 4, depth: 5 });
  });

  test('in two minutes gives up new ones, down to two, and then known ones again', () => {
    expect(fitRound({ ...four, budgetMs: 120_000 })).toEqual({ fresh: 2, depth: 3 });
    expect(fitRound({ ...four, budgetMs: 60_000 })).toEqual({ fresh: 2, depth: 2 });
    expect(fitRound({ ...four, budgetMs: 30_000 })).toEqual({ fresh: 1, depth: 1 });
    expect(fitRound({ ...four, budgetMs: 10_000 })).toBeNull();
  });

  test('without a new fact is none', () => {
    expect(fitRound({ ...four, fresh: 0, budgetMs: 600_000 })).toBeNull();
  });
});

describe('what a card takes', () => {
  test('is the middle of the child’s own', () => {
    expect(cardTime([4000, 2000, 9000])).toBe(4000);
  });

  test('is 5 s where nothing is known, and never beyond belief', () => {
    expect(cardTime([])).toBe(5000);
    expect(cardTime([200])).toBe(1500);
    expect(cardTime([90_000])).toBe(15_000);
  });
});
