import { describe, expect, test } from 'vitest';
import { codeOf } from '../../../src/core/paper/paper-code';
import { paperSat } from '../../../src/core/paper/paper-sat';
import { findSet } from '../../../src/parent/children/set-list';
import { matching, printedSheets, sheetOfCode } from '../../../src/parent/paper/find-sheet';
import { hasSheetOn, planOnPaper } from '../../../src/parent/paper/paper-plan';
import { planPrints, printedDraft, schoolDaysFrom } from '../../../src/parent/paper/plan-prints';
import { type FakeDesk, fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';

const day = '2026-11-25';

function planned(desk: FakeDesk, days = 1) {
  const household = desk.household.value;
  const history = desk.history.value;
  if (!history) throw new Error('no history');
  const order = { children: household.children, from: day, days, set: null };
  return planPrints(household, history, order);
}

function found(desk: FakeDesk) {
  const history = desk.history.value;
  if (!history) throw new Error('no history');
  return printedSheets(desk.household.value, history);
}

describe('sheets planned for the printer', () => {
  test('are one for each child and school day, as long and laid out as the child’s own', () => {
    const sheets = planned(fakeDesk(day, twoChildren), 3);
    // Wednesday, Thursday and Friday.
    expect(sheets.map((one) => [one.day, one.child, one.facts.length])).toEqual([
      ['2026-11-25', 'wren', 10],
      ['2026-11-25', 'teo', 25],
      ['2026-11-26', 'wren', 10],
      ['2026-11-26', 'teo', 25],
      ['2026-11-27', 'wren', 10],
      ['2026-11-27', 'teo', 25],
    ]);
    expect(new Set(sheets.map(codeOf)).size).toBe(6);
  });

  test('are other sheets once these have been printed', async () => {
    const desk = fakeDesk(day, twoChildren);
    const first = planned(desk, 5);
    await desk.record(first.map((sheet) => printedDraft(sheet, day)));
    const second = planned(desk, 5);
    expect(second.filter((sheet) => first.some((one) => codeOf(one) === codeOf(sheet)))).toEqual([]);
  });

  test('mix in kept facts by the child’s share, and their code says so', () => {
    const desk = fakeDesk(day, [
      ...twoChildren,
      { kind: 'setKept', child: 'teo', set: 'times-2', kept: true },
    ]);
    const [, teo] = planned(desk);
    const own = findSet(desk.household.value, 'times-7')?.facts ?? [];
    expect(teo?.shape.hasKept).toBe(true);
    expect(teo?.facts.filter((fact) => !own.includes(fact))).toHaveLength(5);
  });

  test('fall on school days only; a child without any has the days as they come', () => {
    expect(schoolDaysFrom('2026-11-27', 3, [1, 2, 3, 4, 5])).toEqual([
      '2026-11-27',
      '2026-11-30',
      '2026-12-01',
    ]);
    expect(schoolDaysFrom('2026-11-27', 2, [])).toEqual(['2026-11-27', '2026-11-28']);
  });
});

describe('a printed sheet', () => {
  test('is found by the first digits of its code and by day, and has its facts as printed', async () => {
    const desk = fakeDesk(day, twoChildren);
    const sheets = planned(desk, 2);
    const records = await desk.record(sheets.map((sheet) => printedDraft(sheet, day)));
    // Printed ahead, yet nothing stands in the history after the day it happened on.
    expect(new Set(records.map((record) => 'day' in record && record.day))).toEqual(new Set([day]));
    expect(found(desk).map(({ sheet }) => sheet.day)).toEqual([
      '2026-11-26',
      '2026-11-26',
      '2026-11-25',
      '2026-11-25',
    ]);
    for (const sheet of sheets) {
      const [only, ...more] = matching(found(desk), codeOf(sheet).slice(0, 4));
      expect(more).toEqual([]);
      expect(only?.sheet.facts).toEqual(sheet.facts);
    }
  });

  test('keeps its facts when the parent’s own set it came from is changed', async () => {
    const facts = (findSet(fakeDesk(day).household.value, 'times-7')?.facts ?? []).slice(0, 8);
    const desk = fakeDesk(day, [
      { kind: 'childAdded', child: 'teo', name: 'Teo', edge: 1 },
      { kind: 'setMade', set: 'own-1', name: 'Eight', facts },
      { kind: 'setStarted', child: 'teo', set: 'own-1' },
    ]);
    const [sheet] = planned(desk);
    if (!sheet) throw new Error('no sheet');
    await desk.record([
      printedDraft(sheet, day),
      { kind: 'setMade', set: 'own-1', name: 'Six', facts: facts.slice(2) },
    ]);
    expect(found(desk)[0]?.sheet.facts).toEqual(sheet.facts);
  });

  test('printed elsewhere is made again from its code, unless it mixed in kept facts', () => {
    const desk = fakeDesk(day, twoChildren);
    const [wren] = planned(desk);
    if (!wren) throw new Error('no sheet');
    const again = sheetOfCode(codeOf(wren), [], desk.household.value, day);
    expect(typeof again === 'string' ? again : again.sheet.facts).toEqual(wren.facts);
    const mixed = codeOf({ ...wren, shape: { ...wren.shape, hasKept: true } });
    expect(sheetOfCode(mixed, [], desk.household.value, day)).toBe('elsewhere');
  });

  test('is entered once, and open again when its sitting does not count', async () => {
    const desk = fakeDesk(day, twoChildren);
    const [sheet] = planned(desk);
    const [wren] = desk.household.value.children;
    if (!sheet || !wren) throw new Error('no sheet');
    await desk.record([printedDraft(sheet, day)]);
    const result = { reached: 10, marks: new Map() };
    const sat = paperSat(planOnPaper(sheet, wren, false, false), result, desk.startOnPaper(day));
    const [record] = await desk.record([sat]);
    expect(found(desk)[0]?.entered?.sat.id).toBe(record?.id);
    const own = desk.history.value?.children.get('wren');
    expect(own && hasSheetOn(day, own)).toBe(true);
    expect(own && hasSheetOn('2026-11-26', own)).toBe(false);
    if (record?.kind !== 'sat') throw new Error('no sitting');
    await desk.record([
      { kind: 'ruled', child: 'wren', target: record.id, targetDay: day, ruling: { what: 'void' } },
    ]);
    expect(found(desk)[0]?.entered).toBeNull();
  });

  test('taken back is no longer found', async () => {
    const desk = fakeDesk(day, twoChildren);
    const [record] = await desk.record(planned(desk).map((sheet) => printedDraft(sheet, day)));
    await desk.undo(record?.id ?? '');
    expect(found(desk)).toHaveLength(1);
  });
});
