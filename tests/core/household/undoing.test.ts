import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldUndoing } from '../../../src/core/household/undoing';
import type { Undone } from '../../../src/core/record/household-record';
import { compareStamps } from '../../../src/core/record/stamp';
import { stamped } from './made-records';

const target = stamped(1);

function undoing(seq: number, of: string, id = `r${seq}`): Undone {
  return { ...stamped(seq, { id }), kind: 'undone', target: of };
}

function fold(...undoings: readonly Undone[]) {
  return foldUndoing([...undoings].sort(compareStamps));
}

describe('undoing', () => {
  test('a chain of undoings holds every other time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), (length) => {
        const chain = Array.from({ length }, (_, index) => undoing(index + 2, `r${index + 1}`));
        expect(fold(...chain).isUndone(target)).toBe(length % 2 === 1);
      }),
    );
  });

  test('by two devices takes both to be undone', () => {
    const both = [undoing(2, 'r1', 'x'), undoing(3, 'r1', 'y')];
    expect(fold(...both).isUndone(target)).toBe(true);
    expect(new Set(fold(...both).undoneBy('r1'))).toEqual(new Set(['x', 'y']));
    expect(fold(...both, undoing(4, 'x')).isUndone(target)).toBe(true);
    expect(fold(...both, undoing(4, 'x'), undoing(5, 'y')).isUndone(target)).toBe(false);
  });

  test('of a record that has not arrived waits', () => {
    const { isUndone } = fold(undoing(2, 'r9'));
    expect(isUndone(target)).toBe(false);
    expect(isUndone(stamped(1, { id: 'r9' }))).toBe(true);
  });

  test('counts only when later by its counter than what it takes back', () => {
    expect(fold(undoing(1, 'r5')).isUndone(stamped(5))).toBe(false);
    expect(fold(undoing(5, 'other')).isUndone(stamped(5, { id: 'other' }))).toBe(false);
  });

  test('in a circle ends, and the later of two undoes the earlier', () => {
    const x = undoing(2, 'b', 'a');
    const y = undoing(3, 'a', 'b');
    expect(fold(x, y).isUndone(x)).toBe(true);
    expect(fold(x, y).isUndone(y)).toBe(false);
    expect(fold(undoing(4, 'self', 'self')).isUndone(undoing(4, 'self', 'self'))).toBe(false);
  });

  test('agrees with its definition on any tangle', () => {
    const some = fc.uniqueArray(
      fc.record({ seq: fc.integer({ min: 1, max: 8 }), id: fc.nat(12), target: fc.nat(12) }),
      { selector: ({ id }) => id, maxLength: 12 },
    );
    fc.assert(
      fc.property(some, (made) => {
        const tangle = made.map(({ seq, id, target: of }) => undoing(seq, `r${of}`, `r${id}`));
        const isUndone = (record: { id: string; seq: number }): boolean =>
          tangle.some((u) => u.target === record.id && u.seq > record.seq && !isUndone(u));
        const folded = fold(...tangle);
        for (const record of tangle) expect(folded.isUndone(record)).toBe(isUndone(record));
      }),
    );
  });
});
