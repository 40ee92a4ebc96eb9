import fc from 'fast-check';
import { mean } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { makeDice } from '../../../src/core/sheet/dice';
import type { Order } from '../../../src/readings/clock-trial/orders';
import { drawOrder, type TrialPlan, trialOrders, trialStand } from '../../../src/readings/clock-trial/trial';
import { type TrialDay, trialReading } from '../../../src/readings/clock-trial/trial-result';

const plans: readonly TrialPlan[] = ['eight', 'ten', 'twelveInPairs'];
const facts = ['mul-2-3', 'mul-4-7', 'mul-6-8', 'mul-9-9'] as const;

const plan = fc.constantFrom(...plans);
const ms = fc.integer({ min: 300, max: 8000 });
/** Days of one answer a fact, times at random. */
const daysOf = (count: number) =>
  fc.array(fc.array(ms, { minLength: 4, maxLength: 4 }), { minLength: count, maxLength: count });

const sat = (order: Order, times: readonly (readonly number[])[]): readonly TrialDay[] =>
  times.map((day, at) => ({
    as: order[at] ?? 'noClock',
    answers: day.map((firstKeyMs, which) => ({
      fact: facts[which] ?? 'mul-2-2',
      firstKeyMs,
      right: firstKeyMs < 5000,
    })),
  }));

describe('the order of a trial', () => {
  it.each(plans)(
    '%s: every order is balanced, no two are the same, and each has its mirror in the list',
    (of) => {
      const orders = trialOrders[of];
      const written = new Set(orders.map((order) => order.join()));
      expect(written.size).toBe(orders.length);
      for (const order of orders) {
        expect(order.filter((kind) => kind === 'thread')).toHaveLength(order.length / 2);
        const mirror = order.map((kind) => (kind === 'thread' ? 'noClock' : 'thread'));
        expect(written.has(mirror.join())).toBe(true);
        expect(/(thread,){4}|(noClock,){4}/.test(`${order.join()},`)).toBe(false);
      }
    },
  );

  it('is the same from the same dice, and over many dice each order comes as often', () => {
    expect(drawOrder('ten', makeDice(5))).toEqual(drawOrder('ten', makeDice(5)));
    const dice = makeDice(11);
    const counts = new Map<string, number>();
    for (let draw = 0; draw < 6200; draw += 1) {
      const order = drawOrder('eight', dice).join();
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(62);
    const chi2 = [...counts.values()].reduce((sum, count) => sum + (count - 100) ** 2 / 100, 0);
    // The 99.9 % point of chi-squared with 61 degrees of freedom.
    expect(chi2).toBeLessThan(100.9);
  });

  it('goes on by days sat: a day missed takes nothing out', () => {
    const order = drawOrder('eight', makeDice(3));
    expect(trialStand(order, 0)).toEqual({ next: order[0], left: 8 });
    expect(trialStand(order, 5)).toEqual({ next: order[5], left: 3 });
    expect(trialStand(order, 8)).toEqual({ next: null, left: 0 });
    expect(trialStand(order, 9)).toEqual({ next: null, left: 0 });
  });
});

describe('the reading of a trial', () => {
  it('finds a clear effect with the smallest p there is, and its ratio', () => {
    for (const of of plans) {
      for (const order of trialOrders[of].filter((_, at) => at % 9 === 0)) {
        const times = order.map((kind, at) =>
          facts.map((_, which) => (900 + 3 * at + 200 * which) * (kind === 'thread' ? 1.5 : 1)),
        );
        const reading = trialReading(trialOrders[of], order, sat(order, times));
        expect(reading.test?.pTwoSided).toBeCloseTo(2 / trialOrders[of].length, 12);
        expect(reading.test?.orders).toBe(trialOrders[of].length);
        expect(reading.ratio).toBeCloseTo(1.5, 1);
        expect(reading.facts).toBe(4);
      }
    }
  });

  it('whatever the times, no more of the orders than it says end up under a p-value', () => {
    // If the clock does nothing the times are what they are, and only the draw is chance: the very promise of the test.
    fc.assert(
      fc.property(daysOf(8), fc.constantFrom(0.04, 0.1, 0.3), (times, alpha) => {
        const orders = trialOrders.eight;
        const under = orders.filter(
          (order) => (trialReading(orders, order, sat(order, times)).test?.pTwoSided ?? 1) <= alpha,
        );
        expect(under.length / orders.length).toBeLessThanOrEqual(alpha);
      }),
      { numRuns: 15 },
    );
  });

  it('is the difference of mean logs over facts, counted over the list, worked the long way', () => {
    fc.assert(
      fc.property(daysOf(10), fc.nat(193), (times, which) => {
        const orders = trialOrders.ten;
        const drawn = orders[which] ?? [];
        const difference = (order: Order) =>
          mean(
            facts.map((_, at) => {
              const logs = (kind: string) =>
                times.filter((_, day) => order[day] === kind).map((day) => Math.log(day[at] ?? 1));
              return mean(logs('thread')) - mean(logs('noClock'));
            }),
          );
        const seen = difference(drawn);
        const reading = trialReading(orders, drawn, sat(drawn, times));
        expect(Math.log(reading.ratio ?? 0)).toBeCloseTo(seen, 9);
        const beyond = orders.filter((order) => Math.abs(difference(order)) >= Math.abs(seen) - 1e-9).length;
        expect(reading.test?.pTwoSided).toBeCloseTo(beyond / 194, 12);
      }),
      { numRuns: 15 },
    );
  });

  it('stopped early only describes', () => {
    fc.assert(
      fc.property(plan, fc.integer({ min: 0, max: 7 }), (of, count) => {
        const [order = []] = trialOrders[of];
        const times = Array.from({ length: count }, (_, at) =>
          facts.map((_, which) => 900 + at * 10 + which),
        );
        const reading = trialReading(trialOrders[of], order, sat(order, times));
        expect(reading.test).toBeNull();
        expect(reading.days).toBe(count);
        expect(reading.accuracy.thread.of + reading.accuracy.noClock.of).toBe(4 * count);
      }),
    );
    expect(trialReading(trialOrders.eight, trialOrders.eight[0] ?? [], [])).toMatchObject({
      ratio: null,
      facts: 0,
    });
  });

  it('reads only facts met on both kinds of days; accuracy takes all answers', () => {
    const order = trialOrders.eight[0] ?? [];
    const days = sat(
      order,
      order.map(() => [1000, 1000, 1000, 1000]),
    ).map((day) => ({
      ...day,
      answers: day.answers.filter(({ fact }) => fact !== 'mul-9-9' || day.as === 'thread'),
    }));
    const reading = trialReading(trialOrders.eight, order, days);
    expect(reading.facts).toBe(3);
    expect(reading.ratio).toBe(1);
    expect(reading.test?.pTwoSided).toBe(1);
    expect(reading.accuracy).toEqual({ thread: { right: 16, of: 16 }, noClock: { right: 12, of: 12 } });
  });

  it('is not tested without a time, and days sat otherwise are counted and stay with what was drawn', () => {
    const order = trialOrders.eight[0] ?? [];
    const times = order.map((kind) => facts.map(() => (kind === 'thread' ? 1500 : 1000)));
    const silent = sat(order, times).map((day) => ({
      ...day,
      answers: day.answers.map((answer) => ({ ...answer, firstKeyMs: null })),
    }));
    expect(trialReading(trialOrders.eight, order, silent)).toMatchObject({
      test: null,
      ratio: null,
      facts: 0,
      days: 8,
    });
    const days = sat(order, times);
    const swapped = days.map((day, at) =>
      at < 2 ? ({ ...day, as: day.as === 'thread' ? 'noClock' : 'thread' } as const) : day,
    );
    const reading = trialReading(trialOrders.eight, order, swapped);
    expect(reading.otherwise).toBe(2);
    expect(reading.ratio).toBeCloseTo(1.5, 9);
    expect(reading.test?.pTwoSided).toBeCloseTo(2 / 62, 12);
  });
});
