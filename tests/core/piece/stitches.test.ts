import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PromptId } from '../../../src/core/fact/prompt';
import { stitchRows } from '../../../src/core/piece/stitches';
import { type Deed, facts, marked, sit } from '../marking/made-sat';

const mixed: readonly PromptId[] = ['add-6-2', 'sub-9-4', 'mul-7-8', 'div-56-7', 'mul-6-7', 'mul-8-9'];
const sheet = marked(sit(mixed, ['right', 'wrong', 'skip', 'right']));
const states = (rows: ReturnType<typeof stitchRows>) => rows.flat().map(({ state }) => state);

test('each place is a stitch of its operation, five to a row', () => {
  const rows = stitchRows(sheet, [], false);
  expect(rows.map((row) => row.length)).toEqual([5, 1]);
  expect(rows.flat().map(({ op }) => op)).toEqual(['add', 'sub', 'mul', 'div', 'mul', 'mul']);
});

test('only a wrong or skipped fact leaves a hole; what was not reached is loose until the day ends', () => {
  expect(states(stitchRows(sheet, [], false))).toEqual([
    'stitch',
    'hole',
    'hole',
    'stitch',
    'loose',
    'loose',
  ]);
  expect(states(stitchRows(sheet, [], true))).toEqual(['stitch', 'hole', 'hole', 'stitch', 'plain', 'plain']);
});

test('mending closes a hole, right in an extra row too', () => {
  const row = marked(sit(['mul-7-8'], ['right'], { purpose: 'row' }));
  const mending = marked(sit(['sub-9-4'], ['wrong'], { purpose: 'mending' }));
  expect(states(stitchRows(sheet, [row, mending], true))).toEqual([
    'stitch',
    'hole',
    'mended',
    'stitch',
    'plain',
    'plain',
  ]);
});

test('mended at the day’s end, any sheet is whole: no hole and no loose thread', () => {
  const deeds = fc.array(fc.constantFrom<Deed>('right', 'wrong', 'skip'), { maxLength: 25 });
  fc.assert(
    fc.property(deeds, (done) => {
      const any = marked(sit(facts(25), done));
      const mended = marked(
        sit(
          facts(25),
          facts(25).map(() => 'right' as const),
        ),
      );
      const rows = stitchRows(any, [mended], true);
      expect(rows).toHaveLength(5);
      expect(rows.flat().map(({ place }) => place)).toEqual([...facts(25).keys()]);
      for (const state of states(rows)) expect(['stitch', 'mended', 'plain']).toContain(state);
    }),
    { numRuns: 200 },
  );
});
