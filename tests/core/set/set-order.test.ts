import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { operations } from '../../../src/core/fact/fact-list';
import { moveSet, orderedSets } from '../../../src/core/set/set-order';
import { defaultOrder, setById, teachingSets } from '../../../src/core/set/teaching-sets';

const anyOp = fc.constantFrom(...operations);
const anyOrder = fc.shuffledSubarray(teachingSets.map(({ id }) => id));
const groupsOf = (sets: readonly { readonly id: string; readonly kind: string }[]) =>
  sets.filter(({ kind }) => kind === 'group').map(({ id }) => id);

function setOf(id: string) {
  const set = setById(id);
  if (!set) throw new Error(`no set ${id}`);
  return set;
}

describe('the order of sets', () => {
  test('is the default one until the parent changes it', () => {
    for (const op of operations) expect(orderedSets(op, 9, [])).toEqual(defaultOrder(op));
  });

  test('holds the same sets, whatever order was recorded', () => {
    fc.assert(
      fc.property(anyOp, anyOrder, (op, order) => {
        const sets = orderedSets(op, 12, order);
        expect(sets.map(({ id }) => id).toSorted()).toEqual(
          defaultOrder(op, 12)
            .map(({ id }) => id)
            .toSorted(),
        );
      }),
    );
  });

  test('has the sets named in the order named', () => {
    fc.assert(
      fc.property(anyOp, anyOrder, (op, order) => {
        const sets = orderedSets(op, 12, order).map(({ id }) => id);
        const named = order.filter((id) => sets.includes(id));
        expect(sets.filter((id) => named.includes(id))).toEqual(named);
      }),
    );
  });

  test('leaves a set that is not named in its place, and passes over ids it does not know', () => {
    const sets = orderedSets('add', 9, ['near-doubles', 'gone-long-ago', 'plus-2']).map(({ id }) => id);
    const usual = defaultOrder('add').map(({ id }) => id);
    expect(sets.indexOf('near-doubles')).toBe(usual.indexOf('plus-2'));
    expect(sets.indexOf('plus-2')).toBe(usual.indexOf('near-doubles'));
    expect(sets.indexOf('doubles')).toBe(usual.indexOf('doubles'));
  });

  test('an id named twice counts once', () => {
    expect(orderedSets('add', 9, ['plus-2', 'plus-2'])).toEqual(defaultOrder('add'));
  });
});

describe('moving a set', () => {
  test('changes places with its neighbour, and moving back brings the order back', () => {
    const order = moveSet([], setOf('doubles'), 9, -1);
    const usual = groupsOf(defaultOrder('add'));
    const now = groupsOf(orderedSets('add', 9, order));
    expect(now.indexOf('doubles')).toBe(usual.indexOf('doubles') - 1);
    expect(groupsOf(orderedSets('add', 9, moveSet(order, setOf('doubles'), 9, 1)))).toEqual(usual);
  });

  test('past either end does nothing', () => {
    expect(moveSet([], setOf('plus-0-and-1'), 9, -1)).toEqual([]);
    expect(moveSet([], setOf('past-ten'), 9, 1)).toEqual([]);
  });

  test('the mixes stay last', () => {
    expect(moveSet([], setOf('mix-add'), 9, -1)).toEqual([]);
    fc.assert(
      fc.property(
        anyOp,
        anyOrder,
        fc.nat(),
        fc.constantFrom(-1 as const, 1 as const),
        (op, order, at, by) => {
          const groups = orderedSets(op, 9, order).filter(({ kind }) => kind === 'group');
          const set = groups[at % groups.length];
          if (!set) throw new Error('no group');
          const moved = orderedSets(op, 9, moveSet([], set, 9, by));
          expect(moved.at(-1)?.id).toBe(`mix-${op}`);
        },
      ),
    );
  });

  test('leaves the order of the other operations alone', () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const moved = moveSet(order, setOf('times-4'), 9, -1);
        for (const op of ['add', 'sub', 'div'] as const)
          expect(orderedSets(op, 12, moved)).toEqual(orderedSets(op, 12, order));
      }),
    );
  });

  test('among the basic sets passes over those to 12', () => {
    const order = moveSet([], setOf('times-0-and-1'), 9, -1);
    const now = groupsOf(orderedSets('mul', 9, order));
    expect(now.slice(0, 3)).toEqual(['times-2', 'times-0-and-1', 'times-5']);
    expect(groupsOf(orderedSets('mul', 12, order))).toHaveLength(groupsOf(defaultOrder('mul', 12)).length);
  });
});
