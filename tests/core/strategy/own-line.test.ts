import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldHousehold } from '../../../src/core/household/fold-household';
import type { HouseholdRecord, LineWritten } from '../../../src/core/record/household-record';
import type { Draft } from '../../../src/core/record/record';
import { foldLines, isLineFit, longestLine } from '../../../src/core/strategy/own-line';
import { facts, jumbled, story } from '../household/made-records';

const line = (fact: LineWritten['fact'], text: string | null) =>
  ({ kind: 'lineWritten', fact, line: text }) as const;

describe('a parent’s own line', () => {
  test('stands by its fact, without the spaces around it', () => {
    const { lines } = foldHousehold(story(line('mul-2-3', '  Two birds, three seeds each  ')));
    expect([...lines]).toEqual([['mul-2-3', 'Two birds, three seeds each']]);
  });

  test('written again is the later one, and taken away leaves the tool’s', () => {
    const records = story(
      line('mul-2-3', 'first'),
      line('mul-2-3', 'second'),
      line('add-7-5', 'seven'),
      line('add-7-5', null),
      line('sub-9-4', '  '),
    );
    expect([...foldHousehold(records).lines]).toEqual([['mul-2-3', 'second']]);
  });

  test('undone brings the one before back', () => {
    const records = story<Draft>(line('mul-2-3', 'first'), line('mul-2-3', 'second'), {
      kind: 'undone',
      target: 'r2',
    });
    expect(foldHousehold(records as HouseholdRecord[]).lines.get('mul-2-3')).toBe('first');
  });

  test('does not mind in which order its records arrive, nor how often', () => {
    const drafts = fc.array(fc.tuple(fc.constantFrom(...facts), fc.option(fc.string())), { maxLength: 12 });
    fc.assert(
      fc.property(
        drafts.chain((made) => {
          const records = story(...made.map(([fact, text]) => line(fact, text)));
          return fc.record({ records: fc.constant(records), mixed: jumbled(records) });
        }),
        ({ records, mixed }) => {
          expect(foldHousehold(mixed).lines).toEqual(foldHousehold(records).lines);
          expect(foldHousehold(records).lines).toEqual(foldLines(records));
        },
      ),
    );
  });

  test('is fit with 1 to 60 characters', () => {
    expect(isLineFit('x')).toBe(true);
    expect(isLineFit('  ')).toBe(false);
    expect(isLineFit('x'.repeat(longestLine))).toBe(true);
    expect(isLineFit('x'.repeat(longestLine + 1))).toBe(false);
  });
});

describe('a spoken check', () => {
  const added = { kind: 'childAdded', child: 'ann', name: 'Ann', edge: 0 } as const;
  const checked = (day: string, came: 'right' | 'helped' | 'notYet') =>
    ({ kind: 'spokenChecked', child: 'ann', day, answers: [{ fact: 'mul-2-3', came }] }) as const;
  const spokenOf = (...drafts: readonly Draft[]) =>
    foldHousehold(story(...drafts) as HouseholdRecord[]).children[0]?.spoken;

  test('stands with its child, by day', () => {
    expect(spokenOf(added, checked('2026-03-09', 'right'), checked('2026-03-02', 'notYet'))).toEqual([
      { day: '2026-03-02', answers: [{ fact: 'mul-2-3', came: 'notYet' }] },
      { day: '2026-03-09', answers: [{ fact: 'mul-2-3', came: 'right' }] },
    ]);
  });

  test('can be taken back', () => {
    expect(spokenOf(added, checked('2026-03-09', 'right'), { kind: 'undone', target: 'r2' })).toEqual([]);
  });
});
