import { describe, expect, it } from 'vitest';
import { homeOf } from '../../../../src/core/household/bring-back';
import { foldHousehold } from '../../../../src/core/household/fold-household';
import { effectiveHistory } from '../../../../src/core/household/history';
import type { HouseholdRecord } from '../../../../src/core/record/household-record';
import { bookOf } from '../../../../src/parent/marking/book-of';
import { setsOf } from '../../../../src/parent/record-book/report/sets-of';
import { readTerm } from '../../../../src/parent/record-book/report/term';
import { satOf, stamped, story } from '../../../core/household/made-records';

const added = story({ kind: 'childAdded', child: 'ann', name: 'Ann', edge: 1 });
const sats = [
  satOf('ann', '2026-03-02', 10, [
    ['mul-2-3', '6'],
    ['mul-2-4', '7'],
  ]),
  satOf('ann', '2026-03-02', 11, [['mul-2-4', '8']], { purpose: 'mending' }),
  satOf('ann', '2026-03-30', 12, [
    ['mul-2-3', '6'],
    ['mul-2-4', null],
  ]),
  satOf('ann', '2026-04-01', 13, [['mul-2-5', '10']]),
  satOf('ann', '2026-04-02', 14, [['mul-2-5', '10']]),
];
const voided: HouseholdRecord = {
  ...stamped(20),
  kind: 'ruled',
  child: 'ann',
  target: 's14',
  targetDay: '2026-04-02',
  ruling: { what: 'void' },
};

function entries(...more: readonly HouseholdRecord[]) {
  const household = foldHousehold([...added, ...more]);
  return bookOf(household, effectiveHistory(sats, household), 'ann');
}

describe('a term', () => {
  it('counts days, sheets and the answers of its sheets, month by month', () => {
    const { whole, months } = readTerm(entries(), { from: '2026-03-01', to: '2026-04-30' });
    expect(whole).toMatchObject({ days: 4, sheets: 4, answers: 5, right: 4 });
    expect(
      months.map(({ month, work }) => [month, work.days, work.sheets, work.answers, work.right]),
    ).toEqual([
      ['2026-03', 2, 2, 3, 2],
      ['2026-04', 2, 2, 2, 2],
    ]);
  });

  it('holds both its ends, and nothing else', () => {
    expect(readTerm(entries(), { from: '2026-03-30', to: '2026-04-01' }).whole).toMatchObject({ days: 2 });
    expect(readTerm(entries(), { from: '2026-05-01', to: '2026-05-31' })).toMatchObject({
      whole: { days: 0, minutes: 0 },
      months: [],
      samples: [],
    });
  });

  it('leaves out what was voided', () => {
    expect(readTerm(entries(voided), { from: '2026-04-01', to: '2026-04-30' }).whole.sheets).toBe(1);
  });

  it('shows the first sheet, one from the middle and the last', () => {
    const { samples } = readTerm(entries(), { from: '2026-03-01', to: '2026-04-30' });
    expect(samples.map(({ sat }) => sat.day)).toEqual(['2026-03-02', '2026-03-30', '2026-04-02']);
  });
});

it('sets begun and kept are those of the days, each once, and not what was taken back', () => {
  const at = Date.parse('2026-03-10T12:00:00');
  const records = story(
    { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 1 },
    { kind: 'setStarted', child: 'ann', set: 'doubles' },
    { kind: 'setStarted', child: 'ann', set: 'times-2' },
    { kind: 'setKept', child: 'ann', set: 'doubles', kept: true },
    { kind: 'setStarted', child: 'ann', set: 'times-5' },
    { kind: 'undone', target: 'r5' },
  ).map((record) => ({ ...record, at: record.id === 'r2' ? at - 40 * 86_400_000 : at }));
  const household = foldHousehold(homeOf(records));
  const [ann] = household.children;
  if (!ann) throw new Error('no child');
  const span = { from: '2026-03-01', to: '2026-03-31' };
  expect(setsOf(records.toReversed(), ann, household, span)).toEqual({
    begun: ['times-2'],
    kept: ['doubles'],
  });
});
