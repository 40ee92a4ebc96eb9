import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { countCards, rehearse } from '../../../src/core/round/rehearse';

const fact = (n: number): FactId => `mul-${n}-7`;
const facts = (from: number, count: number) => Array.from({ length: count }, (_, i) => fact(from + i));
const short = (cards: ReturnType<typeof rehearse>, names: Readonly<Record<FactId, string>>) =>
  cards.map((card) => `${names[card.fact]}${card.isNew ? '!' : ''}`).join(' ');
const size = fc.record({
  fresh: fc.integer({ min: 0, max: 8 }),
  known: fc.integer({ min: 0, max: 12 }),
  depth: fc.integer({ min: 1, max: 9 }),
});

describe('few known facts', () => {
  test('one: it is asked about as soon as it was shown, and the next new one has two', () => {
    const names = { [fact(1)]: 'U', [fact(2)]: 'V', [fact(11)]: 'K' };
    expect(short(rehearse([fact(1), fact(2)], [fact(11)], 9), names)).toBe('U! K U K V! U V U K');
  });

  test('none: a new fact is followed by itself, and is the first known one after', () => {
    const names = { [fact(1)]: 'U', [fact(2)]: 'V', [fact(3)]: 'W' };
    expect(short(rehearse(facts(1, 3), [], 9), names)).toBe('U! U V! U V U W! V W V U');
  });

  test('and no new one: no cards', () => {
    expect(rehearse([], facts(1, 9), 9)).toEqual([]);
  });
});

test('a new fact shows itself the first time and never again', () => {
  fc.assert(
    fc.property(size, ({ fresh, known, depth }) => {
      const news = facts(1, fresh);
      const cards = rehearse(news, facts(20, known), depth);
      for (const one of news) {
        const own = cards.filter((card) => card.fact === one);
        expect(own.map(({ isNew }) => isNew)).toEqual(own.map((_, index) => index === 0));
        expect(own.length).toBeGreaterThanOrEqual(2);
      }
      expect(cards.filter(({ isNew }) => isNew).map((card) => card.fact)).toEqual(news);
    }),
  );
});

test('the cards are as many as counted beforehand', () => {
  fc.assert(
    fc.property(size, ({ fresh, known, depth }) => {
      expect(rehearse(facts(1, fresh), facts(20, known), depth)).toHaveLength(
        countCards(fresh, known, depth),
      );
    }),
  );
});

test('among known ones no card follows itself', () => {
  fc.assert(
    fc.property(size, ({ fresh, known, depth }) => {
      if (known === 0) return;
      const cards = rehearse(facts(1, fresh), facts(20, known), depth);
      expect(cards.filter((card, index) => card.fact === cards[index + 1]?.fact)).toEqual([]);
    }),
  );
});

test('the more new facts or depth, the more cards', () => {
  fc.assert(
    fc.property(size, ({ fresh, known, depth }) => {
      expect(countCards(fresh + 1, known, depth)).toBeGreaterThan(countCards(fresh, known, depth));
      expect(countCards(fresh, known, depth + 1)).toBeGreaterThanOrEqual(countCards(fresh, known, depth));
    }),
  );
});
