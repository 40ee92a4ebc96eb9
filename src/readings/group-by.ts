/** The items that share a key, in the order of each key's first item. */
export function groupBy<T, K>(items: readonly T[], keyOf: (item: T) => K): readonly (readonly T[])[] {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}
