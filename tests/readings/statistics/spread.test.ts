import fc from 'fast-check';
import jstat from 'jstat';
import { mean, sampleVariance } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { logNormalMean, logNormalQuantile } from '../../../src/readings/statistics/log-normal';
import { median, robustSpread, spreadsOut } from '../../../src/readings/statistics/robust-spread';
import { jamesStein, meanWeight, shrink, varianceParts } from '../../../src/readings/statistics/shrinkage';
import { inverseEfficiencyMs } from '../../../src/readings/statistics/speed-accuracy';

const time = fc.integer({ min: 200, max: 9000 });
const times = fc.array(time, { minLength: 1, maxLength: 30 });

describe('middle and spread', () => {
  it('follow a change of unit', () => {
    fc.assert(
      fc.property(times, (values) => {
        const inS = robustSpread(values.map((value) => value / 1000));
        const inMs = robustSpread(values);
        expect((inS?.median ?? 0) * 1000).toBeCloseTo(inMs?.median ?? -1, 6);
        expect((inS?.spread ?? 0) * 1000).toBeCloseTo(inMs?.spread ?? -1, 6);
      }),
    );
  });

  it('are not moved far by one wild value, and leave the values as they were', () => {
    const values = [900, 1000, 1100, 1200, 1300, 60_000];
    const before = [...values];
    expect(robustSpread(values)?.median).toBe(1150);
    expect(robustSpread(values)?.spread).toBeLessThan(300);
    expect(values).toEqual(before);
    expect(median([])).toBeNull();
    expect(robustSpread([])).toBeNull();
    expect(spreadsOut(5, { median: 5, spread: 0 })).toBe(0);
    expect(spreadsOut(6, { median: 5, spread: 0 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('a log-normal has the mean and quantiles of the registry library', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 9, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (middle, s, p) => {
          const quantile = logNormalQuantile({ median: middle, s }, p);
          expect(quantile).toBeCloseTo(jStatLog(p, Math.log(middle), s), 4);
          expect(logNormalMean({ median: middle, s })).toBeGreaterThan(middle);
        },
      ),
    );
  });

  const jStatLog = (p: number, mu: number, s: number) => jstat.jStat.lognormal.inv(p, mu, s);
});

describe('variance parts', () => {
  it('in groups of one size they are the one-way analysis of variance, worked the long way', () => {
    const group = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(group, { minLength: 2, maxLength: 8 }), (groups) => {
        const within = mean(groups.map((values) => sampleVariance(values)));
        const between = sampleVariance(groups.map((values) => mean(values))) - within / 4;
        const parts = varianceParts(groups);
        expect(parts?.within).toBeCloseTo(within, 6);
        expect(parts?.between).toBeCloseTo(Math.max(0, between), 6);
        expect(parts?.centre).toBeCloseTo(mean(groups.flat()), 6);
      }),
    );
  });

  it('are right on average where groups differ in size', () => {
    // Every value of −1 and 1 in both parts, so the mean over all is the expectation itself.
    const sizes = [1, 2, 3];
    let [between, count] = [0, 0];
    for (let draw = 0; draw < 2 ** 9; draw += 1) {
      const bit = (place: number) => ((draw >> place) & 1 ? 1 : -1);
      let place = 3;
      const groups = sizes.map((size, group) =>
        Array.from({ length: size }, () => 5 * bit(group) + bit(place++)),
      );
      const total = groups.flat().length;
      const all = mean(groups.flat());
      const squares = groups
        .map((values) => values.length * (mean(values) - all) ** 2)
        .reduce((a, b) => a + b);
      const inside = groups.flatMap((values) => values.map((value) => (value - mean(values)) ** 2));
      const within = inside.reduce((a, b) => a + b) / (total - 3);
      const raw = (squares / 2 - within) / ((total - (1 + 4 + 9) / total) / 2);
      expect(varianceParts(groups)?.between).toBeCloseTo(Math.max(0, raw), 9);
      between += raw;
      count += 1;
    }
    expect(between / count).toBeCloseTo(25, 9);
  });

  it('are withheld without two groups or without a group of two; empty groups count for nothing', () => {
    expect(varianceParts([[1, 2, 3]])).toBeNull();
    expect(varianceParts([[1], [2], [3]])).toBeNull();
    expect(varianceParts([[], [1, 2], [5, 6], []])).toEqual(
      varianceParts([
        [1, 2],
        [5, 6],
      ]),
    );
    expect(varianceParts([[4, 4], [4]])).toEqual({ centre: 4, between: 0, within: 0 });
  });

  it('a mean is drawn toward the centre, the less the more answers it has', () => {
    const parts = { centre: 7, between: 0.09, within: 0.16 };
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 9, noNaN: true }),
        fc.integer({ min: 1, max: 50 }),
        (own, count) => {
          const drawn = shrink(own, count, parts);
          expect(Math.abs(drawn.value - 7)).toBeLessThanOrEqual(Math.abs(own - 7));
          expect(drawn.weight).toBeLessThan(shrink(own, count + 1, parts).weight);
          expect(drawn.error).toBeLessThan(0.3);
        },
      ),
    );
    expect(shrink(9, 0, parts)).toEqual({ value: 7, weight: 0, error: 0.3 });
    expect(meanWeight(0, 0, 5)).toBe(0);
  });

  it('James and Stein never move a value past the centre, and leave three values as they are', () => {
    expect(jamesStein([1, 2, 3], 5)).toEqual({ factor: 1, shrunk: [1, 2, 3] });
    expect(jamesStein([1, 2, 3, 4], 500)).toEqual({ factor: 0, shrunk: [2.5, 2.5, 2.5, 2.5] });
    expect(jamesStein([2, 2, 2, 2], 1).shrunk).toEqual([2, 2, 2, 2]);
    expect(jamesStein([], 1)).toEqual({ factor: 1, shrunk: [] });
  });
});

it('a time without errors is worth itself', () => {
  expect(inverseEfficiencyMs(840, 0)).toBe(840);
});
