import { mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { evenMemoryStrength, memoryStrength, recallTime } from '../../src/core/memory/memory-strength';
import { makeDice } from '../../src/core/sheet/dice';
import { betaBelow } from '../../src/readings/statistics/beta';
import { binomialUpTo } from '../../src/readings/statistics/binomial';
import { hodgesLehmann } from '../../src/readings/statistics/hodges-lehmann';
import { leastSquares } from '../../src/readings/statistics/least-squares';
import { logNormalMean, logNormalQuantile } from '../../src/readings/statistics/log-normal';
import { exactMcNemar } from '../../src/readings/statistics/mcnemar';
import { robustSpread, spreadsOut } from '../../src/readings/statistics/robust-spread';
import { jamesStein, meanWeight, shrink, varianceParts } from '../../src/readings/statistics/shrinkage';
import { signFlip } from '../../src/readings/statistics/sign-flip';
import { signedRank } from '../../src/readings/statistics/signed-rank';
import { chanceUpTo, signedRankNull } from '../../src/readings/statistics/signed-rank-null';
import { inverseEfficiencyMs } from '../../src/readings/statistics/speed-accuracy';
import { theilSen } from '../../src/readings/statistics/theil-sen';
import { wilsonInterval } from '../../src/readings/statistics/wilson';
import { sleepstudy } from './sleepstudy';

// "Recomputed" below means: worked out again in R 4.2.2 and SciPy 1.17, outside this project.

const dice = () => makeDice(1);
const points = (xs: readonly number[], ys: readonly number[]) =>
  xs.map((x, i) => ({ x, y: ys[i] ?? Number.NaN }));
const byDay = (subject: number) => points([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], sleepstudy.get(subject) ?? []);

describe('Wilson intervals', () => {
  // Newcombe 1998, table 1 (the table from memory; each recomputed).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i, as in Newcombe 1998', (right, of, low, high) => {
    const interval = wilsonInterval(right, of);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });

  // Recomputed.
  it.each([
    [9, 10, 0.59585, 0.982124],
    [10, 10, 0.722467, 1],
    [5, 5, 0.565518, 1],
    [3, 5, 0.230724, 0.882379],
    [19, 20, 0.763869, 0.991119],
  ])('%i of %i, to six digits', (right, of, low, high) => {
    const interval = wilsonInterval(right, of);
    expect(interval.low).toBeCloseTo(low, 6);
    expect(interval.high).toBeCloseTo(high, 6);
  });
});

describe('signed rank', () => {
  // Hollander & Wolfe 1973, p. 29, the depression scores of R's ?wilcox.test.
  const before = [1.83, 0.5, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.3];
  const after = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29];
  const differences = before.map((value, index) => value - (after[index] ?? 0));

  it('gives V and both p-values of Hollander & Wolfe', () => {
    const test = signedRank(differences);
    expect(test.v).toBe(40);
    expect(test.pGreater).toBeCloseTo(0.01953125, 12);
    expect(test.pTwoSided).toBeCloseTo(0.0390625, 12);
    expect(test.exact).toBe(true);
  });

  it('gives their shift and its interval', () => {
    const shift = hodgesLehmann(differences);
    expect(shift?.shift).toBeCloseTo(0.46, 10);
    expect(shift?.interval?.low).toBeCloseTo(0.01, 10);
    expect(shift?.interval?.high).toBeCloseTo(0.786, 10);
  });

  it('the sign-flip of the mean of the same scores is 7/512 (recomputed)', () => {
    expect(signFlip(differences, dice()).pGreater).toBe(7 / 512);
  });

  // The usual table of two-sided .05 critical values, n = 6 to 15 (published; recomputed).
  it.each([
    [6, 0],
    [7, 2],
    [8, 3],
    [9, 5],
    [10, 8],
    [11, 10],
    [12, 13],
    [13, 17],
    [14, 21],
    [15, 25],
  ])('the critical value for %i pairs is %i', (pairs, critical) => {
    const chance = signedRankNull(Array.from({ length: pairs }, (_, index) => index + 1));
    expect(2 * chanceUpTo(critical, chance)).toBeLessThanOrEqual(0.05);
    expect(2 * chanceUpTo(critical + 1, chance)).toBeGreaterThan(0.05);
  });
});

describe('sign flips', () => {
  // Darwin's maize, eighths of an inch: Fisher 1935, The Design of Experiments, §21 (data from memory; recomputed).
  const maize = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];

  it("Darwin's maize: 863 of 32,768 flips reach the sum of 314", () => {
    const test = signFlip(maize, dice());
    expect(test.sum).toBe(314);
    expect(test.pGreater).toBe(863 / 32_768);
    expect(test.pTwoSided).toBeCloseTo(0.05267334, 8);
  });

  // Student 1908, hours of sleep gained (published; recomputed).
  const sleep = [1.2, 2.4, 1.3, 1.3, 0, 1.0, 1.8, 0.8, 4.6, 1.4];

  it("Student's sleep: t, its p, the sign-flip and the shift", () => {
    // The registry library's own one-sample t divides by n where Student divides by n − 1.
    const t = mean(sleep) / (sampleStandardDeviation(sleep) / Math.sqrt(10));
    expect(t).toBeCloseTo(4.062128, 6);
    const twoSidedP = betaBelow({ right: 9 / 2, wrong: 1 / 2 }, 9 / (9 + t * t));
    expect(twoSidedP).toBeCloseTo(0.00283289, 8);
    expect(signFlip(sleep, dice()).pTwoSided).toBe(0.00390625);
    expect(hodgesLehmann(sleep)?.shift).toBeCloseTo(1.3, 12);
  });
});

describe('one-way items', () => {
  // Exact McNemar (recomputed).
  it.each([
    [5, 0, 0.0625, 6],
    [6, 0, 0.03125, 6],
    [7, 1, 0.0703, 4],
  ])('%i one way and %i the other', (one, other, p, digits) => {
    expect(exactMcNemar(one, other).pTwoSided).toBeCloseTo(p, digits);
  });

  it('six pairs are the fewest with a rank or sign-flip result under .05 (recomputed)', () => {
    for (const test of [signedRank, (x: readonly number[]) => signFlip(x, dice())]) {
      expect(test([1, 2, 3, 4, 5]).pTwoSided).toBeGreaterThan(0.05);
      expect(test([1, 2, 3, 4, 5, 6]).pTwoSided).toBeLessThan(0.05);
    }
  });

  it('a child right 9 times in 10 gets 3 or fewer of 5 in 8 % of rows (recomputed)', () => {
    expect(binomialUpTo(3, 5, 0.9)).toBeCloseTo(0.08146, 6);
  });

  it('eight looks at .38 % each stay at 3 % together (recomputed)', () => {
    expect(1 - binomialUpTo(0, 8, 0.0038)).toBeCloseTo(0.03, 4);
  });
});

describe('lines', () => {
  it('Sen 1968: slope 4, 93 % interval 3.71 to 4.38', () => {
    const line = theilSen(points([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78]), 0.93);
    expect(line?.slope).toBe(4);
    expect(line?.interval?.low).toBeCloseTo(3.71, 2);
    expect(line?.interval?.high).toBeCloseTo(4.38, 2);
  });

  // Belenky et al. 2003, least squares in ms a day (recomputed).
  it.each([
    [308, 21.7647],
    [309, 2.2618],
    [310, 6.1149],
    [335, -2.881],
    [337, 19.026],
  ])('sleepstudy, subject %i: %f ms a day', (subject, slope) => {
    expect(leastSquares(byDay(subject))?.slope).toBeCloseTo(slope, 4);
  });

  it('sleepstudy: the mean of all slopes (recomputed)', () => {
    const slopes = [...sleepstudy.keys()].map((subject) => leastSquares(byDay(subject))?.slope ?? Number.NaN);
    expect(mean(slopes)).toBeCloseTo(10.46729, 5);
  });

  it.each([
    [308, 24.1523],
    [335, -3.1228],
  ])('sleepstudy, subject %i: the median of slopes (recomputed)', (subject, slope) => {
    expect(theilSen(byDay(subject))?.slope).toBeCloseTo(slope, 4);
  });

  // Zbrodoff 1995, alphabet arithmetic, s for +2, +3, +4 by block (published); slopes recomputed.
  it.each([
    [[1.84, 2.46, 2.82], 0.49],
    [[1.21, 1.45, 1.42], 0.105],
    [[1.14, 1.21, 1.17], 0.015],
  ])('Zbrodoff 1995: %j s is a slope of %f s a count', (seconds, slope) => {
    expect(leastSquares(points([2, 3, 4], seconds))?.slope).toBeCloseTo(slope, 10);
  });

  // Anderson 1981, paired associates, trials 2 to 8 (published): the practice effect both series show.
  it.each([
    ['accuracy', [0.526, 0.667, 0.798, 0.887, 0.924, 0.958, 0.954], 1],
    ['latency, s', [2.156, 1.967, 1.762, 1.68, 1.552, 1.467, 1.402], -1],
  ])('Anderson 1981: %s has an interval of slopes on one side of 0', (_, series, side) => {
    const line = theilSen(points([2, 3, 4, 5, 6, 7, 8], series));
    expect(Math.sign(line?.interval?.low ?? 0)).toBe(side);
    expect(Math.sign(line?.interval?.high ?? 0)).toBe(side);
  });
});

describe('spread', () => {
  // Heathcote 1996 (published; recomputed).
  const times = [474.688, 506.445, 524.081, 530.672, 530.869, 566.984, 582.311, 582.94, 603.574, 792.358];

  it('Heathcote 1996: mean, median, MAD × 1.4826, and how far out the last two values are', () => {
    const spread = robustSpread(times);
    if (spread === null) throw new Error('there are times');
    expect(mean(times)).toBeCloseTo(569.4922, 4);
    expect(spread.median).toBeCloseTo(548.9265, 10);
    expect(spread.spread).toBeCloseTo(49.962137, 6);
    expect(spreadsOut(792.358, spread)).toBeCloseTo(4.87, 2);
    // Of the other nine the farthest is the first, on the near side.
    expect(Math.max(...times.slice(0, -1).map((time) => Math.abs(spreadsOut(time, spread))))).toBeCloseTo(
      1.49,
      2,
    );
  });

  it('a log-normal with median 1.5 s and s = .4 (recomputed)', () => {
    const times = { median: 1.5, s: 0.4 };
    expect(logNormalMean(times)).toBeCloseTo(1.624931, 6);
    expect(logNormalQuantile(times, 0.9)).toBeCloseTo(2.504492, 6);
  });
});

describe('drawing toward the middle', () => {
  it('Efron & Morris 1975: eighteen batters (factor published as .212, from memory; recomputed)', () => {
    const hits = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7];
    const shares = hits.map((hit) => hit / 45);
    const share = mean(shares);
    const { factor, shrunk } = jamesStein(shares, (share * (1 - share)) / 45);
    expect(factor).toBeCloseTo(0.2117, 4);
    expect(shrunk[0]).toBeCloseTo(0.294, 3);
    expect(shrunk[17]).toBeCloseTo(0.242, 3);
  });

  // σ = .4, τ = .3 on logs (recomputed).
  it.each([
    [1, 0.36],
    [2, 0.5294],
    [3, 0.6279],
    [5, 0.7377],
    [10, 0.8491],
  ])('%i answers weigh %f', (count, weight) => {
    expect(meanWeight(0.3 ** 2, 0.4 ** 2, count)).toBeCloseTo(weight, 4);
  });

  it('sleepstudy: variance parts and the mean of subject 308 (REML in lme4, recomputed)', () => {
    const parts = varianceParts([...sleepstudy.values()]);
    if (parts === null) throw new Error('there are groups');
    expect(parts.between).toBeCloseTo(1278.33765, 3);
    expect(parts.within).toBeCloseTo(1958.86519, 4);
    const own = mean([...(sleepstudy.get(308) ?? [])]);
    expect(own).toBeCloseTo(342.1338, 4);
    const shrunk = shrink(own, 10, parts);
    expect(shrunk.weight).toBeCloseTo(0.86712569, 7);
    expect(shrunk.value).toBeCloseTo(336.3371, 4);
  });
});

describe('memory strength', () => {
  it('ACT-R tutorial, unit 4: one use 5 s ago, exact and as if spread evenly', () => {
    expect(memoryStrength([5])).toBeCloseTo(-0.804718956, 9);
    // The tutorial prints −.11157179; ln 2 − ½ ln 5 is −.111571776, so to seven digits.
    expect(evenMemoryStrength(1, 5)).toBeCloseTo(-0.11157179, 7);
  });

  it('uses 1, 10 and 100 s ago; four at 60 s (recomputed)', () => {
    expect(memoryStrength([1, 10, 100])).toBeCloseTo(0.3479968, 7);
    expect(memoryStrength([60, 60, 60, 60])).toBeCloseTo(-0.6608779, 7);
  });

  it('latency is F·e^−A: at strength 0 it is F, and stronger by ln 2 is half as long', () => {
    expect(recallTime(0.63, 0)).toBe(0.63);
    expect(recallTime(1, Math.LN2)).toBeCloseTo(0.5, 12);
  });
});

it('Vandierendonck 2018: 600 ms with 10 % errors is worth 667', () => {
  expect(Math.round(inverseEfficiencyMs(600, 0.1))).toBe(667);
});
