import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rushingOf } from '../../../src/readings/errors/rushing';

const answers = (right: readonly number[], wrong: readonly number[]) => [
  ...right.map((firstKeyMs) => ({ right: true, firstKeyMs })),
  ...wrong.map((firstKeyMs) => ({ right: false, firstKeyMs })),
];
const times = fc.array(fc.integer({ min: 300, max: 6000 }), { minLength: 1, maxLength: 12 });

describe('rushing', () => {
  it('three wrong answers quicker than all seventeen right ones: 1 in 1,140 by chance', () => {
    const right = Array.from({ length: 17 }, (_, at) => 1000 + 100 * at);
    expect(rushingOf(answers(right, [500, 600, 700]))).toEqual({
      right: 17,
      wrong: 3,
      ratio: 600 / 1800,
      pQuicker: expect.closeTo(1 / 1140, 12),
    });
  });

  it('slow wrong answers are no rushing', () => {
    const { ratio, pQuicker } = rushingOf(answers([900, 1000, 1100, 1200], [4000, 5000]));
    expect(ratio).toBeGreaterThan(1);
    expect(pQuicker).toBe(1);
  });

  it('depends on the order of the times only, not on their unit or the order of answers', () => {
    fc.assert(
      fc.property(times, times, (right, wrong) => {
        const one = rushingOf(answers(right, wrong));
        const other = rushingOf(
          answers(
            right.map((ms) => ms / 1000),
            wrong.map((ms) => ms / 1000),
          ).reverse(),
        );
        expect(other.pQuicker).toBeCloseTo(one.pQuicker, 12);
        expect(other.ratio).toBeCloseTo(one.ratio ?? 0, 9);
      }),
    );
  });

  it('without wrong answers, or without right ones, says nothing', () => {
    expect(rushingOf(answers([900, 1000], []))).toEqual({ right: 2, wrong: 0, ratio: null, pQuicker: 1 });
    expect(rushingOf(answers([], [900]))).toEqual({ right: 0, wrong: 1, ratio: null, pQuicker: 1 });
  });
});
