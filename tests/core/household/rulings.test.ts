import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { HouseholdRecord, Ruling } from '../../../src/core/record/household-record';
import { stamped } from './made-records';

function ruled(seq: number, ruling: Ruling): HouseholdRecord {
  return { ...stamped(seq), kind: 'ruled', child: 'ann', target: 's1', targetDay: '2026-03-02', ruling };
}

function rulingsOf(...records: readonly HouseholdRecord[]) {
  return foldHousehold(records).rulingsOn('s1');
}

describe('rulings on a sitting', () => {
  test('are none where nobody has ruled', () => {
    expect(rulingsOf()).toEqual(noRulings);
    expect(foldHousehold([ruled(1, { what: 'void' })]).rulingsOn('s2')).toEqual(noRulings);
  });

  test.each([
    [{ what: 'void' }, { voided: true }],
    [{ what: 'notOwnWork' }, { notOwnWork: true }],
    [{ what: 'bandAnyway' }, { bandAnyway: true }],
    [{ what: 'wrongChild', child: 'bo' }, { child: 'bo' }],
    [{ what: 'rows', rows: 0 }, { rows: 0 }],
    [{ what: 'accept', place: 3 }, { accepted: new Set([3]) }],
    [{ what: 'slip', place: 3, slip: false }, { slips: new Map([[3, false]]) }],
  ] satisfies [Ruling, object][])('%o', (ruling, folded) => {
    expect(rulingsOf(ruled(1, ruling))).toEqual({ ...noRulings, ...folded });
  });

  test('of which two disagree follow the later', () => {
    const rows = [ruled(1, { what: 'rows', rows: 2 }), ruled(2, { what: 'rows', rows: 0 })];
    expect(rulingsOf(...rows.toReversed()).rows).toBe(0);
    const slips = [
      ruled(1, { what: 'slip', place: 4, slip: true }),
      ruled(2, { what: 'slip', place: 4, slip: false }),
      ruled(3, { what: 'slip', place: 5, slip: true }),
    ];
    expect(rulingsOf(...slips.toReversed()).slips).toEqual(
      new Map([
        [4, false],
        [5, true],
      ]),
    );
  });

  test('are undone and done again, and the list says which is so', () => {
    const undo = (seq: number, target: string): HouseholdRecord => ({
      ...stamped(seq),
      kind: 'undone',
      target,
    });
    const voided = ruled(1, { what: 'void' });
    expect(rulingsOf(voided, undo(2, 'r1')).voided).toBe(false);
    expect(foldHousehold([voided, undo(2, 'r1')]).rulings).toEqual([
      { record: voided, active: false, undoneBy: ['r2'] },
    ]);
    expect(rulingsOf(voided, undo(2, 'r1'), undo(3, 'r2')).voided).toBe(true);
    expect(foldHousehold([voided, undo(2, 'r1'), undo(3, 'r2')]).rulings).toEqual([
      { record: voided, active: true, undoneBy: [] },
    ]);
  });

  test('that give a sitting back to the child who sat it move nothing', () => {
    const away = ruled(1, { what: 'wrongChild', child: 'bo' });
    const back = ruled(2, { what: 'wrongChild', child: 'ann' });
    expect(foldHousehold([away]).moves).toHaveLength(1);
    expect(foldHousehold([away, back]).moves).toEqual([]);
  });
});
