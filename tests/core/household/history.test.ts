import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { effectiveHistory, type History } from '../../../src/core/household/history';
import type { HouseholdRecord, Ruling } from '../../../src/core/record/household-record';
import type { HistoryRecord } from '../../../src/core/record/record';
import type { Sat } from '../../../src/core/record/sat';
import { anyLog, jumbled, satOf, stamped } from './made-records';

const sheet = (child: string, day: string, seq: number, over: Partial<Sat> = {}) =>
  satOf(child, day, seq, [['mul-2-3', '6']], over);

function ruled(seq: number, sat: Sat, ruling: Ruling): HouseholdRecord {
  return { ...stamped(seq), kind: 'ruled', child: sat.child, target: sat.id, targetDay: sat.day, ruling };
}

function view(history: readonly HistoryRecord[], home: readonly HouseholdRecord[] = []): History {
  return effectiveHistory(history, foldHousehold(home));
}

function idsOf(history: History, child: string): string[] {
  return (history.children.get(child)?.sittings ?? []).map(({ sat }) => sat.id);
}

describe('the history', () => {
  test('is the same for any order and any duplicates', () => {
    const cases = anyLog.chain(({ home, history }) =>
      fc.record({
        home: fc.constant(home),
        history: fc.constant(history),
        jumbled: jumbled(history),
        jumbledHome: jumbled(home),
      }),
    );
    fc.assert(
      fc.property(cases, (c) => {
        const plain = view(c.history, c.home);
        const other = view(c.jumbled, c.jumbledHome);
        expect([...other.children].sort(byKey)).toEqual([...plain.children].sort(byKey));
      }),
    );
  });

  test('has every sitting of a living child once, with the child it belongs to', () => {
    fc.assert(
      fc.property(anyLog, ({ home, history }) => {
        const household = foldHousehold(home);
        const shown = [...effectiveHistory(history, household).children.values()].flatMap((c) => c.sittings);
        const expected = history
          .filter(
            (r) => r.kind === 'sat' && !household.tombstones.has(household.rulingsOn(r.id).child ?? r.child),
          )
          .map(({ id }) => id);
        expect(shown.map(({ sat }) => sat.id).sort()).toEqual(expected.sort());
        for (const { child, sat, rulings } of shown) expect(child).toBe(rulings.child ?? sat.child);
      }),
    );
  });

  test('goes by day, then by counter: a clock set back does not lose a sitting', () => {
    const history = [
      sheet('ann', '2026-03-04', 1),
      sheet('ann', '2026-03-02', 3),
      sheet('ann', '2026-03-04', 2),
    ];
    expect(idsOf(view(history), 'ann')).toEqual(['s3', 's1', 's2']);
  });

  test('keeps a voided sitting and says that it is voided', () => {
    const sat = sheet('ann', '2026-03-02', 1);
    const [only] = view([sat], [ruled(2, sat, { what: 'void' })]).children.get('ann')?.sittings ?? [];
    expect(only?.rulings.voided).toBe(true);
  });

  test('gives a sitting to the child it was ruled to belong to', () => {
    const sat = sheet('ann', '2026-03-02', 1);
    const history = view([sat], [ruled(2, sat, { what: 'wrongChild', child: 'bo' })]);
    expect(idsOf(history, 'ann')).toEqual([]);
    expect(idsOf(history, 'bo')).toEqual(['s1']);
  });

  test('takes rows and mending where their sheet goes, and voids them with it', () => {
    const of = sheet('ann', '2026-03-02', 1);
    const row = sheet('ann', '2026-03-02', 2, { purpose: 'row', of: of.id });
    const moved = view([of, row], [ruled(3, of, { what: 'wrongChild', child: 'bo' })]);
    expect(idsOf(moved, 'bo')).toEqual([of.id, row.id]);
    expect(idsOf(moved, 'ann')).toEqual([]);
    const voided = view([of, row], [ruled(3, of, { what: 'void' })]);
    expect(voided.children.get('ann')?.sittings.map(({ rulings }) => rulings.voided)).toEqual([true, true]);
  });

  test('leaves a deleted child out, and with it what was ruled to be that child’s', () => {
    const own = sheet('ann', '2026-03-02', 1);
    const given = sheet('bo', '2026-03-02', 2);
    const taken = sheet('ann', '2026-03-03', 3);
    const home: HouseholdRecord[] = [
      ruled(4, given, { what: 'wrongChild', child: 'ann' }),
      ruled(5, taken, { what: 'wrongChild', child: 'bo' }),
      { ...stamped(6), kind: 'childDeleted', child: 'ann' },
    ];
    const history = view([own, given, taken], home);
    expect([...history.children.keys()]).toEqual(['bo']);
    expect(idsOf(history, 'bo')).toEqual(['s3']);
  });

  test('counts what a later version made and shows the rest', () => {
    const later = sheet('ann', '2026-03-02', 1, { v: 99 });
    const foreign = { ...sheet('ann', '2026-03-02', 2), kind: 'spoken' } as unknown as HistoryRecord;
    const history = view([later, foreign, sheet('ann', '2026-03-02', 3)]);
    expect(history.later).toBe(2);
    expect(idsOf(history, 'ann')).toEqual(['s3']);
  });
});

describe('changes for one day', () => {
  const changed = (seq: number, change: object, day = '2026-03-02'): HistoryRecord => ({
    ...stamped(seq),
    kind: 'dayChanged',
    child: 'ann',
    day,
    change,
  });
  const changesOf = (history: HistoryRecord[], home: HouseholdRecord[] = []) =>
    view(history, home).children.get('ann')?.changes;

  test('are the latest of each field, for that day only', () => {
    const history = [
      changed(3, { timed: true }),
      changed(1, { timed: false, length: 10 }),
      changed(2, { skip: true }, '2026-03-03'),
    ];
    expect(changesOf(history)).toEqual(
      new Map([
        ['2026-03-02', { timed: true, length: 10 }],
        ['2026-03-03', { skip: true }],
      ]),
    );
  });

  test('are taken back, and back again', () => {
    const history = [changed(1, { length: 10 }), changed(2, { length: 5 })];
    const undo: HouseholdRecord = { ...stamped(3), kind: 'undone', target: 'r2' };
    expect(changesOf(history, [undo])?.get('2026-03-02')).toEqual({ length: 10 });
    const redo: HouseholdRecord = { ...stamped(4), kind: 'undone', target: 'r3' };
    expect(changesOf(history, [undo, redo])?.get('2026-03-02')).toEqual({ length: 5 });
  });
});

function byKey([x]: [string, unknown], [y]: [string, unknown]): number {
  return x < y ? -1 : 1;
}
