import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GapLine } from '../../../src/core/gap-line/gap-line';
import { isGapRight, parseGapPrompt } from '../../../src/core/gap-line/gap-prompt';
import { type LineOrder, planLines, tableOf } from '../../../src/core/gap-line/plan-lines';
import { lineAsk } from '../../../src/core/gap-line/words';
import { setById, teachingSets } from '../../../src/core/set/teaching-sets';

const factsOfSet = (id: string) => setById(id)?.facts ?? [];
const anySet = fc.constantFrom(...teachingSets.map(({ facts }) => facts));
const anyOrder: fc.Arbitrary<LineOrder> = fc
  .record({ set: anySet, lines: fc.nat(5), stories: fc.nat(4), seed: fc.nat() })
  .map((order) => ({ ...order, facts: order.set }));

function linesOf(order: LineOrder): readonly GapLine[] {
  return planLines(order).flatMap((id) => {
    const prompt = parseGapPrompt(id);
    return prompt?.kind === 'line' ? [prompt] : [];
  });
}

describe('the day’s lines and stories', () => {
  test('are as many as asked for, three questions a line, every one readable', () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const ids = planLines(order);
        const prompts = ids.map(parseGapPrompt);
        expect(prompts).not.toContain(null);
        expect(prompts.filter((prompt) => prompt?.kind === 'line')).toHaveLength(3 * order.lines);
        expect(prompts.filter((prompt) => prompt?.kind === 'story').length).toBeLessThanOrEqual(
          order.stories,
        );
        expect(planLines(order)).toEqual(ids);
      }),
    );
  });

  test('count by 2, 3, 5, 10 and the current table, within the child’s reach', () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const table = tableOf(order.set);
        const top = Math.max(order.set.some((id) => /^(add|sub)/.test(id)) ? 50 : 120, 12 * (table ?? 0));
        for (const { step, shown } of linesOf(order)) {
          expect([2, 3, 5, 10, table]).toContain(step);
          for (const number of shown)
            if (number !== null) expect(number).toBeLessThanOrEqual(Math.max(top, 12 * step));
        }
      }),
    );
  });

  test('begin with the current table, and come in every step and both ways', () => {
    const order = { set: factsOfSet('times-7'), facts: [], lines: 1, stories: 0 };
    const seen = Array.from({ length: 60 }, (_, seed) => linesOf({ ...order, seed })[0]);
    expect(new Set(seen.map((line) => line?.step))).toEqual(new Set([7]));
    expect(new Set(seen.map((line) => line?.way))).toEqual(new Set(['up', 'down']));
    const five = linesOf({ ...order, lines: 5, seed: 1 }).map(({ step }) => step);
    expect(new Set(five)).toEqual(new Set([2, 3, 5, 7, 10]));
  });

  test('tell stories of today’s facts, none of them twice', () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const told = planLines(order).flatMap((id) => {
          const prompt = parseGapPrompt(id);
          return prompt?.kind === 'story' ? [prompt.fact.id] : [];
        });
        expect(new Set(told).size).toBe(told.length);
        for (const id of told) expect(order.facts).toContain(id);
      }),
    );
  });
});

describe('the current table', () => {
  test.each([
    ['times-7', 7],
    ['divide-by-7', 7],
    ['times-12', 12],
    ['squares', null],
    ['plus-8', null],
    ['mix-mul', null],
  ] as const)('of %s is %s', (set, table) => {
    expect(tableOf(factsOfSet(set))).toBe(table);
  });
});

describe('an answer', () => {
  test('is right when it is the number, with a nought before it too', () => {
    expect(isGapRight('line-up-5-5-a-0', '15')).toBe(true);
    expect(isGapRight('line-up-5-5-a-2', '05')).toBe(true);
    expect(isGapRight('story-jars-mul-3-4', '12')).toBe(true);
  });

  test.each([null, '', '14', '1 5', '-15', '1e1'])('%s is not right', (given) => {
    expect(isGapRight('line-up-5-5-a-0', given)).toBe(false);
  });

  test('to what is neither a line nor a story is never right', () => {
    expect(isGapRight('mul-3-4', '12')).toBe(false);
  });
});

test('what a line asks is said in at most six words', () => {
  for (const id of ['line-up-5-5-a-0', 'line-up-5-5-a-2', 'line-down-5-50-a-2']) {
    const line = parseGapPrompt(id);
    if (line?.kind !== 'line') throw new Error('these are lines');
    expect(lineAsk(line).split(' ').length).toBeLessThanOrEqual(6);
  }
});
