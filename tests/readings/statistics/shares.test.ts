import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { betaBelow, betaMean, betaQuantile } from '../../../src/readings/statistics/beta';
import { binomialChance, binomialUpTo } from '../../../src/readings/statistics/binomial';
import { exactMcNemar } from '../../../src/readings/statistics/mcnemar';
import { normalQuantile, twoSidedZ } from '../../../src/readings/statistics/normal-quantile';
import { normalTail } from '../../../src/readings/statistics/normal-tail';
import { hitsAtLeast } from '../../../src/readings/statistics/poisson-binomial';
import { pooledPrior, priorStrength, withAnswers } from '../../../src/readings/statistics/pooled-prior';
import { wilsonInterval } from '../../../src/readings/statistics/wilson';

const { jStat } = jstat;
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
const tally = fc
  .record({ of: fc.integer({ min: 0, max: 30 }), part: share })
  .map(({ of, part }) => ({ of, right: Math.round(of * part) }));

describe('the normal curve', () => {
  it('gives the quantiles of the registry library and turns round at ½', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 0.5, noNaN: true }), (p) => {
        expect(normalQuantile(p)).toBeCloseTo(jStat.normal.inv(p, 0, 1), 5);
        expect(normalQuantile(1 - p)).toBeCloseTo(-normalQuantile(p), 6);
      }),
    );
  });

  // Tables to be had anywhere; the digits as R's qnorm prints them.
  it.each([
    [0.9, 1.6448536269514722],
    [0.95, 1.959963984540054],
    [0.99, 2.5758293035489004],
    [1 - 2e-10, 6.361340902404],
  ])('z for %f', (level, z) => {
    expect(twoSidedZ(level)).toBeCloseTo(z, level > 0.999 ? 6 : 12);
  });

  it('has the tails of the registry library', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (z) => {
        expect(normalTail(z)).toBeCloseTo(1 - jStat.normal.cdf(z, 0, 1), 6);
      }),
    );
  });
});

describe('counts', () => {
  it('binomial chances agree with the registry library', () => {
    fc.assert(
      fc.property(fc.nat(30), fc.nat(30), share, (x, y, chance) => {
        const [count, of] = [Math.min(x, y), Math.max(x, y)];
        expect(binomialChance(count, of, chance)).toBeCloseTo(jStat.binomial.pdf(count, of, chance), 9);
        expect(binomialUpTo(count, of, chance)).toBeCloseTo(jStat.binomial.cdf(count, of, chance), 9);
      }),
    );
    expect(binomialUpTo(0, 3, 0)).toBe(1);
    expect(binomialUpTo(2, 3, 1)).toBe(0);
  });

  it('chances of a fair coin are exact, and logarithms carry on where the ways no longer fit a number', () => {
    expect(binomialUpTo(0, 6, 0.5)).toBe(1 / 64);
    expect(binomialUpTo(2, 8, 0.5)).toBe(37 / 256);
    expect(binomialChance(501, 1001, 0.5) / binomialChance(500, 1000, 0.5)).toBeCloseTo(1001 / 1002, 9);
  });

  it('tries with one chance are a binomial', () => {
    fc.assert(
      fc.property(fc.nat(20), fc.nat(20), share, (x, y, chance) => {
        const [least, of] = [Math.min(x, y), Math.max(x, y)];
        const chances = new Array<number>(of).fill(chance);
        const below = least === 0 ? 0 : binomialUpTo(least - 1, of, chance);
        expect(hitsAtLeast(least, chances)).toBeCloseTo(1 - below, 10);
      }),
    );
  });

  it('tries with chances of their own, by hand', () => {
    expect(hitsAtLeast(1, [0.5, 0.2])).toBeCloseTo(0.6, 12);
    expect(hitsAtLeast(2, [0.5, 0.2])).toBeCloseTo(0.1, 12);
    expect(hitsAtLeast(0, [])).toBe(1);
    expect(hitsAtLeast(3, [0.5, 0.2])).toBe(0);
  });

  it('of more than a thousand tries comes near the exact chance', () => {
    const chances = Array.from({ length: 1000 }, (_, at) => 0.05 + (at % 10) / 40);
    // A try that can't hit changes nothing but the count of tries.
    for (const least of [140, 160, 170, 180, 200]) {
      const nearly = hitsAtLeast(least, [...chances, 0]);
      expect(Math.abs(nearly - hitsAtLeast(least, chances))).toBeLessThan(0.005);
    }
    const certain = new Array<number>(1500).fill(1);
    expect(hitsAtLeast(1500, certain)).toBe(1);
    expect(hitsAtLeast(1501, certain)).toBe(0);
  });

  it('McNemar does not care which way is which, and even ways say nothing', () => {
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), (one, other) => {
        expect(exactMcNemar(one, other)).toEqual(exactMcNemar(other, one));
        expect(exactMcNemar(one, one).pTwoSided).toBe(1);
      }),
    );
    expect(exactMcNemar(0, 0)).toEqual({ oneWay: 0, pTwoSided: 1 });
  });

  it('a Wilson interval holds the share, stays in 0 to 1 and narrows with more answers', () => {
    fc.assert(
      fc.property(
        tally.filter(({ of }) => of > 0),
        ({ right, of }) => {
          const { low, high } = wilsonInterval(right, of);
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeLessThanOrEqual(1);
          expect(low).toBeLessThanOrEqual(right / of);
          expect(high).toBeGreaterThanOrEqual(right / of);
          const twice = wilsonInterval(2 * right, 2 * of);
          expect(twice.high - twice.low).toBeLessThan(high - low);
        },
      ),
    );
  });
});

describe('the beta spread', () => {
  it('agrees with the registry library', () => {
    const size = fc.double({ min: 0.2, max: 60, noNaN: true });
    fc.assert(
      fc.property(size, size, share, (right, wrong, at) => {
        expect(betaBelow({ right, wrong }, at)).toBeCloseTo(jStat.beta.cdf(at, right, wrong), 7);
      }),
    );
  });

  it('has closed forms at its simplest', () => {
    fc.assert(
      fc.property(share, (at) => {
        expect(betaBelow({ right: 1, wrong: 1 }, at)).toBeCloseTo(at, 12);
        expect(betaBelow({ right: 3, wrong: 1 }, at)).toBeCloseTo(at ** 3, 12);
        expect(betaBelow({ right: 1, wrong: 4 }, at)).toBeCloseTo(1 - (1 - at) ** 4, 12);
      }),
    );
    expect(betaBelow({ right: 2, wrong: 2 }, 0)).toBe(0);
    expect(betaBelow({ right: 2, wrong: 2 }, 1)).toBe(1);
  });

  it('its quantile and its share below undo each other', () => {
    const size = fc.double({ min: 0.5, max: 40, noNaN: true });
    fc.assert(
      fc.property(size, size, share, (right, wrong, chance) => {
        const at = betaQuantile({ right, wrong }, chance);
        expect(betaBelow({ right, wrong }, at)).toBeCloseTo(chance, 8);
      }),
    );
  });
});

describe('a prior pooled over a set', () => {
  it('lies inside 0 to 1 and within its bounds of strength whatever was answered', () => {
    fc.assert(
      fc.property(fc.array(tally, { maxLength: 20 }), (tallies) => {
        const prior = pooledPrior(tallies);
        const strength = prior.right + prior.wrong;
        expect(betaMean(prior)).toBeGreaterThan(0);
        expect(betaMean(prior)).toBeLessThan(1);
        expect(strength).toBeGreaterThanOrEqual(priorStrength.least - 1e-9);
        expect(strength).toBeLessThanOrEqual(priorStrength.most + 1e-9);
      }),
    );
  });

  it('is strong where facts are alike and weak where they differ', () => {
    const alike = pooledPrior(Array.from({ length: 12 }, () => ({ right: 8, of: 10 })));
    const apart = pooledPrior(Array.from({ length: 12 }, (_, i) => ({ right: i % 2 ? 10 : 3, of: 10 })));
    expect(alike.right + alike.wrong).toBeCloseTo(priorStrength.most, 9);
    expect(apart.right + apart.wrong).toBeLessThan(6);
  });

  it('finds the strength that made the tallies', () => {
    // Shares at the middles of twelve equal parts of a beta of strength 8, forty answers each.
    const truth = { right: 6, wrong: 2 };
    const tallies = Array.from({ length: 40 }, (_, i) => ({
      right: Math.round(200 * betaQuantile(truth, (i + 0.5) / 40)),
      of: 200,
    }));
    const prior = pooledPrior(tallies);
    expect(betaMean(prior)).toBeCloseTo(0.75, 2);
    expect(prior.right + prior.wrong).toBeGreaterThan(6.5);
    expect(prior.right + prior.wrong).toBeLessThan(9.5);
  });

  it('an unasked fact has the pool’s mean; its own answers outweigh the pool in the end', () => {
    const prior = pooledPrior([
      { right: 9, of: 10 },
      { right: 8, of: 10 },
      { right: 0, of: 0 },
    ]);
    expect(betaMean(withAnswers(prior, { right: 0, of: 0 }))).toBe(betaMean(prior));
    expect(betaMean(withAnswers(prior, { right: 0, of: 1000 }))).toBeLessThan(0.05);
  });
});
