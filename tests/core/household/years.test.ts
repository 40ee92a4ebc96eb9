import { expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import { story } from './made-records';

test('school years stand by the day they begin, the later record of a day holds, and one can be taken back', () => {
  const records = story(
    { kind: 'yearBegun', day: '2027-09-06', name: '2027–28' },
    { kind: 'yearBegun', day: '2026-09-07', name: 'First' },
    { kind: 'yearBegun', day: '2026-09-07', name: '2026–27' },
    { kind: 'undone', target: 'r1' },
  );
  const names = (some: typeof records) => foldHousehold(some).years.map(({ name }) => name);
  expect(names(records.slice(0, 3))).toEqual(['2026–27', '2027–28']);
  expect(names(records)).toEqual(['2026–27']);
});

test('of the remarks on a span of days the latest hold, and empty ones take them away', () => {
  const span = { from: '2026-09-07', to: '2026-12-18' } as const;
  const records = story(
    { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 1 },
    { kind: 'remarkWritten', child: 'ann', ...span, text: 'Uses her fingers.' },
    { kind: 'remarkWritten', child: 'ann', from: '2027-01-04', to: '2027-03-26', text: 'Fewer fingers.' },
    { kind: 'remarkWritten', child: 'ann', ...span, text: 'Used her fingers.' },
    { kind: 'remarkWritten', child: 'ann', from: '2027-01-04', to: '2027-03-26', text: ' ' },
  );
  const remarks = (count: number) => foldHousehold(records.slice(0, count)).children[0]?.remarks;
  expect(remarks(3)).toHaveLength(2);
  expect(remarks(5)).toEqual([{ ...span, text: 'Used her fingers.' }]);
});
