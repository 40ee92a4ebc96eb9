import fc from 'fast-check';
import { expect, it } from 'vitest';
import { groupBy } from '../../src/readings/group-by';

it('groups keep every item, in the order of each key’s first', () => {
  expect(groupBy([3, 1, 4, 1, 5, 9, 2, 6], (n) => n % 3)).toEqual([
    [3, 9, 6],
    [1, 4, 1],
    [5, 2],
  ]);
  fc.assert(
    fc.property(fc.array(fc.nat(9)), (items) => {
      const groups = groupBy(items, (item) => item);
      expect(groups.map(([first]) => first)).toEqual([...new Set(items)]);
      expect(groups.flat().sort()).toEqual([...items].sort());
    }),
  );
});
