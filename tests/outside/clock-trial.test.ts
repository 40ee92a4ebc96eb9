import { describe, expect, it } from 'vitest';
import { balancedOrders, ordersInPairs } from '../../src/readings/clock-trial/orders';
import { reachableP } from '../../src/readings/clock-trial/trial';

// Smallest reachable p-values of randomised days, recomputed in R 4.2.2 outside this project.

describe('days drawn in pairs', () => {
  it.each([
    [6, 0.125, 0.25, 3],
    [8, 0.0625, 0.125, 4],
    [10, 0.031, 0.0625, 3],
    [12, 0.0156, 0.031, 3],
    [16, 0.004, 0.008, 3],
  ])('%i days: %f one-sided, %f two-sided', (days, oneSided, twoSided, digits) => {
    const p = reachableP(ordersInPairs(days));
    expect(p.oneSided).toBeCloseTo(oneSided, digits);
    expect(p.twoSided).toBeCloseTo(twoSided, digits);
  });
});

describe('days drawn from all balanced orders with at most three alike running', () => {
  it.each([
    [8, 62, 0.016, 0.032],
    [10, 194, 0.005, 0.01],
  ])('%i days: %i orders, %f one-sided, %f two-sided', (days, orders, oneSided, twoSided) => {
    const list = balancedOrders(days);
    expect(list).toHaveLength(orders);
    expect(reachableP(list).oneSided).toBeCloseTo(oneSided, 3);
    expect(reachableP(list).twoSided).toBeCloseTo(twoSided, 3);
  });

  it('12 days in pairs: 64 orders', () => {
    expect(ordersInPairs(12)).toHaveLength(64);
  });
});
