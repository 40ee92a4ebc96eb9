import type { Dice } from '../../core/sheet/dice';
import { balancedOrders, type DayKind, type Order, ordersInPairs } from './orders';

/** The trials a parent may ask for: 8 or 10 days in any balanced order, or 12 days in pairs. */
export type TrialPlan = 'eight' | 'ten' | 'twelveInPairs';

/** The list a trial's order is drawn from, and the only list it is analysed over. */
export const trialOrders: Readonly<Record<TrialPlan, readonly Order[]>> = {
  eight: balancedOrders(8),
  ten: balancedOrders(10),
  twelveInPairs: ordersInPairs(12),
};

/** An order drawn from the plan's list, each as likely. */
export function drawOrder(plan: TrialPlan, dice: Dice): Order {
  const orders = trialOrders[plan];
  return orders[dice.below(orders.length)] ?? [];
}

/** The smallest p-values a trial over a list of orders can end with, to be shown before it starts. */
export function reachableP(orders: readonly Order[]): {
  readonly oneSided: number;
  readonly twoSided: number;
} {
  return { oneSided: 1 / orders.length, twoSided: 2 / orders.length };
}

/** Where a trial stands after so many days sat. A day missed is no day: the next one sat takes its place. */
export interface TrialStand {
  readonly next: DayKind | null;
  readonly left: number;
}

/** What the next day of a trial is, and how many days are left. */
export function trialStand(order: Order, daysSat: number): TrialStand {
  return { next: order[daysSat] ?? null, left: Math.max(0, order.length - daysSat) };
}
