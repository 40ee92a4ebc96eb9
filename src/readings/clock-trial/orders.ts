/** What a day of a trial is: with the clock's thread seen, or without a clock. */
export type DayKind = 'thread' | 'noClock';

/** The kinds of a trial's days in the order they are sat. */
export type Order = readonly DayKind[];

/** How many days alike may run on in a balanced order. */
const mostAlike = 3;

/** All orders of so many days with as many of each kind and at most three alike running: 62 of 8, 194 of 10. */
export function balancedOrders(days: number): readonly Order[] {
  return everyOrder(days).filter((order) => isBalanced(order) && longestRun(order) <= mostAlike);
}

/** All orders in which each two days running are one of each kind: 64 of 12. */
export function ordersInPairs(days: number): readonly Order[] {
  return everyOrder(days / 2).map((order) => order.flatMap((kind) => [kind, other(kind)]));
}

function everyOrder(days: number): readonly Order[] {
  let orders: readonly Order[] = [[]];
  for (let day = 0; day < days; day += 1) {
    orders = orders.flatMap((order) => [
      [...order, 'thread' as const],
      [...order, 'noClock' as const],
    ]);
  }
  return orders;
}

function isBalanced(order: Order): boolean {
  return order.filter((kind) => kind === 'thread').length * 2 === order.length;
}

function longestRun(order: Order): number {
  let [run, longest] = [0, 0];
  order.forEach((kind, day) => {
    run = kind === order[day - 1] ? run + 1 : 1;
    longest = Math.max(longest, run);
  });
  return longest;
}

function other(kind: DayKind): DayKind {
  return kind === 'thread' ? 'noClock' : 'thread';
}
