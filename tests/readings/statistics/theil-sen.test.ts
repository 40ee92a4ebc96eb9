import fc from 'fast-check';
import { TheilSenRegression } from 'ml-regression-theil-sen';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../src/readings/statistics/least-squares';
import { theilSen } from '../../../src/readings/statistics/theil-sen';

const line = fc.array(fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 25 }) }), {
  minLength: 3,
  maxLength: 30,
});
const spaced = fc.uniqueArray(
  fc.record({ x: fc.integer({ min: 0, max: 60 }), y: fc.integer({ min: 0, max: 25 }) }),
  { minLength: 3, maxLength: 30, selector: ({ x }) => x },
);

/** How often each count of discordant pairs comes, by inserting one value after another. */
function discordantChances(count: number): readonly number[] {
  let chances = [1];
  for (let next = 2; next <= count; next += 1) {
    const longer = new Array<number>(chances.length + next - 1).fill(0);
    chances.forEach((chance, at) => {
      for (let more = 0; more < next; more += 1) longer[at + more] = (longer[at + more] ?? 0) + chance / next;
    });
    chances = longer;
  }
  return chances;
}

describe('the median of slopes', () => {
  it('agrees with the registry library', () => {
    // Of an even count of slopes the library takes the lower middle one, so only odd counts are compared.
    fc.assert(
      fc.property(spaced, (all) => {
        const points = all.slice(0, all.length % 4 < 2 ? -(all.length % 4) - 1 : all.length);
        const theirs = new TheilSenRegression(
          points.map(({ x }) => x),
          points.map(({ y }) => y),
        );
        expect(theilSen(points)?.slope).toBeCloseTo(theirs.slope, 10);
      }),
    );
  });

  it('follows a change of unit, and lies in its interval', () => {
    fc.assert(
      fc.property(line, (points) => {
        const at = theilSen(points);
        const tilted = theilSen(points.map(({ x, y }) => ({ x, y: y + 3 * x })));
        if (at === null || tilted === null) {
          expect(new Set(points.map(({ x }) => x)).size).toBe(1);
          return;
        }
        expect(tilted.slope).toBeCloseTo(at.slope + 3, 9);
        if (at.interval) {
          expect(at.interval.low).toBeLessThanOrEqual(at.slope);
          expect(at.interval.high).toBeGreaterThanOrEqual(at.slope);
        }
      }),
    );
  });

  it('one wild sitting in nine does not tilt it', () => {
    const points = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((x) => ({ x, y: x === 8 ? -1000 : 2 * x }));
    expect(theilSen(points)?.slope).toBe(2);
  });

  it('is withheld where all x are one', () => {
    expect(
      theilSen([
        { x: 1, y: 2 },
        { x: 1, y: 3 },
      ]),
    ).toBeNull();
    expect(theilSen([])).toBeNull();
  });
});

describe('the interval of the slope', () => {
  it('holds at least what it says against the exact null, for 5 to 60 points', () => {
    for (const level of [0.8, 0.9, 0.95, 0.99]) {
      for (let count = 5; count <= 60; count += 1) {
        // On the points (i, 2^i) all slopes differ and grow with the pair, so the cut can be read off the ends.
        const points = Array.from({ length: count }, (_, x) => ({ x, y: 1.5 ** x }));
        const interval = theilSen(points, level)?.interval;
        if (!interval) continue;
        const slopes = points
          .flatMap((p, i) => points.slice(i + 1).map((q) => (q.y - p.y) / (q.x - p.x)))
          .sort((a, b) => a - b);
        const cut = slopes.indexOf(interval.low) + 1;
        expect(slopes.at(-cut)).toBe(interval.high);
        const missed =
          2 *
          discordantChances(count)
            .slice(0, cut)
            .reduce((a, b) => a + b, 0);
        expect(missed).toBeLessThanOrEqual(1 - level);
      }
    }
  });

  it('needs six points at 95 %', () => {
    const points = (count: number) => Array.from({ length: count }, (_, x) => ({ x, y: x * x }));
    expect(theilSen(points(5))?.interval).toBeNull();
    expect(theilSen(points(6))?.interval).not.toBeNull();
  });
});

it('least squares recovers a line and is withheld where all x are one', () => {
  fc.assert(
    fc.property(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }), (slope, intercept) => {
      const fitted = leastSquares([0, 1, 4, 9].map((x) => ({ x, y: intercept + slope * x })));
      expect(fitted?.slope).toBeCloseTo(slope, 9);
      expect(fitted?.intercept).toBeCloseTo(intercept, 9);
    }),
  );
  expect(
    leastSquares([
      { x: 2, y: 1 },
      { x: 2, y: 5 },
    ]),
  ).toBeNull();
});
