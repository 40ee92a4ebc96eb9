import type { Operation } from '../fact/fact';
import type { Reach } from '../fact/fact-list';
import type { Id } from '../record/stamp';
import type { FactSet } from './fact-set';
import { defaultOrder } from './teaching-sets';

/**
 * The teaching sets of an operation in a parent's own order. The sets it names take the places they hold among
 * themselves; the others stay where the default order has them, and ids it does not know are passed over.
 */
export function orderedSets(op: Operation, reach: Reach, order: readonly Id[]): readonly FactSet[] {
  const sets = defaultOrder(op, reach);
  const byId = new Map(sets.map((set) => [set.id, set]));
  const named = [...new Set(order)].flatMap((id) => byId.get(id) ?? []);
  const isNamed = new Set(named);
  let next = 0;
  return sets.map((set) => (isNamed.has(set) ? (named[next++] ?? set) : set));
}

/**
 * The order in which a teaching group stands one place further up (−1) or down (1) among the groups of its operation,
 * counted to the reach shown; the same order at either end. The mixes stay last.
 */
export function moveSet(order: readonly Id[], set: FactSet, reach: Reach, by: -1 | 1): readonly Id[] {
  if (!set.op || set.kind !== 'group') return order;
  const groups = orderedSets(set.op, reach, order).filter(({ kind }) => kind === 'group');
  const at = groups.findIndex(({ id }) => id === set.id);
  const other = groups[at + by];
  if (at < 0 || !other) return order;
  const all = orderedSets(set.op, 12, order).flatMap(({ id, kind }) => (kind === 'group' ? [id] : []));
  const swapped = all.map((id) => (id === set.id ? other.id : id === other.id ? set.id : id));
  return [...order.filter((id) => !all.includes(id)), ...swapped];
}
