import { mean } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../src/core/fact/fact-list';
import { chanceOf, type Pool, type Taking } from '../../src/readings/errors/lift';

// Chance shares of operand errors over the 64 facts × 2–9, recomputed in R 4.2.2 outside this project. The
// class itself is that of Campbell & Graham 1985 and Harley 1990.

const tables = factsOf('mul').filter(({ a, b }) => a >= 2 && b >= 2);

const operandShare = (taking: Taking, pool: Pool) =>
  mean(
    tables.map((fact) => chanceOf('operand', { fact, before: null, pad: 'phone', reach: 9 }, taking, pool)),
  );

describe('operand errors by chance on × 2–9', () => {
  it('there are 64 facts', () => {
    expect(tables).toHaveLength(64);
  });

  it.each([
    ['done', 'products', 0.421],
    ['done', 'numbers', 0.128],
    ['itself', 'products', 0.476],
    ['itself', 'numbers', 0.142],
  ] as const)('answers taken by %s, %s drawn blindly: %f', (taking, pool, share) => {
    expect(operandShare(taking, pool)).toBeCloseTo(share, 3);
  });
});
