import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PromptId } from '../../../src/core/fact/prompt';
import type { Marked } from '../../../src/core/marking/marked';
import { nextRow, rowsFor } from '../../../src/core/marking/rows';
import { clock45 } from '../sitting/sitter';
import { type Deed, facts, marked, sit } from './made-sat';

const sheetOf = (prompts: readonly PromptId[], deeds: readonly Deed[], cardMs?: readonly number[]): Marked =>
  marked(sit(prompts, deeds, { clock: clock45 }, cardMs));

function rowOf(next: ReturnType<typeof nextRow>, right: number): Marked {
  if ('stop' in next) throw new Error(`no row: ${next.stop}`);
  const deeds = next.facts.map((_, index): Deed => (index < right ? 'right' : 'wrong'));
  return marked(sit(next.facts, deeds, { purpose: 'row' }));
}

const factsOf = (next: ReturnType<typeof nextRow>) => ('facts' in next ? next.facts : next.stop);

// 25 facts: places 3 and 7 wrong, 5 skipped, reached up to 9, the rest not.
const ten: readonly Deed[] = [
  'right',
  'right',
  'right',
  'wrong',
  'right',
  'skip',
  'right',
  'wrong',
  'right',
  'right',
];
const thin = sheetOf(facts(25), ten);
const at = (...places: readonly number[]) => places.map((place) => facts(25)[place]);

describe('how many rows', () => {
  const rows = { firm: 0, even: 0, loose: 1, thin: 2 };
  test('by band none, none, one, two; none without a band', () => {
    expect((['firm', 'even', 'loose', 'thin'] as const).map((band) => rowsFor(band, rows))).toEqual([
      0, 0, 1, 2,
    ]);
    expect(rowsFor(null, rows)).toBe(0);
  });
});

describe('what fills a row', () => {
  test('missed or skipped first, then not reached, in the order of the sheet', () => {
    expect(factsOf(nextRow(thin, [], 2))).toEqual(at(3, 5, 7, 10, 11));
  });

  test('the second row goes on where the first stopped', () => {
    const first = rowOf(nextRow(thin, [], 2), 5);
    expect(factsOf(nextRow(thin, [first], 2))).toEqual(at(12, 13, 14, 15, 16));
  });

  test('when all was reached the slowest follow, slowest first', () => {
    const deeds: readonly Deed[] = ['right', 'right', 'wrong', 'right', 'right', 'right', 'right'];
    const sheet = sheetOf(facts(7), deeds, [1000, 4000, 900, 1500, 5000, 1200, 1100]);
    expect(factsOf(nextRow(sheet, [], 1))).toEqual(at(2, 4, 1, 3, 5));
  });

  test('a fact that stands twice on the sheet comes once in a row', () => {
    const twice: readonly PromptId[] = ['mul-7-8', 'mul-6-7', 'mul-7-8', 'mul-6-7', 'mul-8-9', 'mul-4-7'];
    const sheet = sheetOf(twice, ['wrong', 'wrong', 'wrong', 'wrong', 'right', 'right']);
    expect(factsOf(nextRow(sheet, [], 1))).toEqual(['mul-7-8', 'mul-6-7', 'mul-8-9', 'mul-4-7']);
  });

  test('a short set fills its second row with what was asked already, the open ones first', () => {
    const sheet = sheetOf(facts(6), ['wrong', 'wrong', 'right', 'right', 'right', 'right']);
    const first = marked(sit(at(0, 1, 2, 3, 4) as PromptId[], ['right', 'right', 'right', 'right', 'wrong']));
    expect(factsOf(nextRow(sheet, [first], 2))).toEqual(at(5, 4, 0, 1, 2));
  });

  test('a row never asks a fact twice, has five at most and only facts of the sheet', () => {
    const deed = fc.constantFrom<Deed>('right', 'wrong', 'skip');
    fc.assert(
      fc.property(
        fc.array(deed, { maxLength: 25 }),
        fc.array(fc.nat(5), { maxLength: 6 }),
        fc.nat(4),
        (deeds, rights, sent) => {
          const sheet = sheetOf(facts(25), deeds);
          const done: Marked[] = [];
          for (const right of rights) {
            const next = nextRow(sheet, done, sent);
            if ('stop' in next) break;
            expect(new Set(next.facts).size).toBe(next.facts.length);
            expect(next.facts.length).toBeGreaterThan(0);
            expect(next.facts.length).toBeLessThanOrEqual(5);
            for (const fact of next.facts) expect(facts(25)).toContain(fact);
            done.push(rowOf(next, right));
          }
          expect(done.length).toBeLessThanOrEqual(sent === 0 ? 0 : sent + 2);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('when to stop', () => {
  const rowsWith = (sheet: Marked, sent: number, rights: readonly number[]) => {
    const done: Marked[] = [];
    for (const right of rights) done.push(rowOf(nextRow(sheet, done, sent), right));
    return done;
  };

  test('after the rows sent it is enough', () => {
    expect(nextRow(thin, [], 0)).toEqual({ stop: 'enough' });
    expect(nextRow(thin, rowsWith(thin, 1, [2]), 1)).toEqual({ stop: 'enough' });
    expect(nextRow(thin, rowsWith(thin, 2, [5, 5]), 2)).toEqual({ stop: 'enough' });
  });

  test.each([
    [[3, 4], false],
    [[4, 3], false],
    [[3, 3], true],
    [[0, 2], true],
  ] as const)('rows with %j right bring another: %j', (rights, more) => {
    expect('facts' in nextRow(thin, rowsWith(thin, 2, rights), 2)).toBe(more);
  });

  test('what is not yet right today follows, what was right in a row does not', () => {
    const done = rowsWith(thin, 2, [3, 3]);
    // Right in rows: 3 5 7 and 12 13 14; wrong in rows: 10 11 and 15 16; never asked: 17 on.
    expect(factsOf(nextRow(thin, done, 2))).toEqual(at(17, 18, 19, 20, 21));
    const third = [...done, rowOf(nextRow(thin, done, 2), 2)];
    expect(factsOf(nextRow(thin, third, 2))).toEqual(at(22, 23, 24, 10, 11));
  });

  test('a follow-on row holds only what is open, be it fewer than five', () => {
    const sheet = sheetOf(facts(10), [...Array.from({ length: 8 }, (): Deed => 'wrong'), 'right', 'right']);
    const done = rowsWith(sheet, 2, [3, 3]);
    const open = nextRow(sheet, done, 2);
    expect(factsOf(open)).toEqual(at(3, 4, 8, 9));
  });

  test('a short row all right is a good row, three though they are', () => {
    const sheet = sheetOf(facts(5), ['wrong', 'wrong', 'wrong', 'wrong', 'wrong']);
    const bad = marked(sit(facts(5), ['wrong', 'wrong', 'right', 'right', 'skip']));
    const short = marked(sit(facts(3), ['right', 'right', 'right']));
    expect(nextRow(sheet, [bad, short], 2)).toEqual({ stop: 'enough' });
  });

  test('at most two rows more, then the parent is told', () => {
    expect(nextRow(thin, rowsWith(thin, 2, [1, 1, 1, 1]), 2)).toEqual({ stop: 'tellParent' });
  });

  test('it stops as soon as a row goes well', () => {
    expect(nextRow(thin, rowsWith(thin, 2, [1, 1, 5]), 2)).toEqual({ stop: 'enough' });
    expect(nextRow(thin, rowsWith(thin, 2, [1, 1, 1, 4]), 2)).toEqual({ stop: 'enough' });
  });

  test('a row waived after it was begun is enough', () => {
    expect(nextRow(thin, rowsWith(thin, 2, [1, 1]), 0)).toEqual({ stop: 'enough' });
  });

  test('when nothing is open any more it is enough', () => {
    const sheet = sheetOf(facts(5), ['wrong', 'wrong', 'right', 'right', 'right']);
    const weak = marked(sit(facts(5), ['right', 'right', 'right', 'wrong', 'wrong']));
    const other = marked(sit([...facts(5)].reverse(), ['right', 'right', 'wrong', 'right', 'skip']));
    expect('facts' in nextRow(sheet, [weak, other], 2)).toBe(true);
    const solved = marked(sit([facts(5)[0] ?? 'add-1-1', facts(5)[2] ?? 'add-1-1'], ['right', 'right']));
    expect(nextRow(sheet, [weak, other, solved], 3)).toEqual({ stop: 'enough' });
  });
});
