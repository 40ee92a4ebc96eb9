import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lineIds, parseLine, reachOf, type Shape, shapeNames } from '../../../src/core/gap-line/gap-line';

const anyLine = fc
  .record({
    way: fc.constantFrom('up' as const, 'down' as const),
    step: fc.integer({ min: 1, max: 12 }),
    least: fc.nat(84),
    shape: fc.constantFrom(...shapeNames),
  })
  .map(({ way, step, least, shape }) => {
    return { way, step, shape, first: way === 'up' ? least : least + reachOf(step) };
  });

interface Made {
  readonly way: 'up' | 'down';
  readonly step: number;
  readonly first: number;
  readonly shape: Shape;
}

function questions({ way, step, first, shape }: Made) {
  return lineIds(way, step, first, shape).map((id) => {
    const line = parseLine(id);
    if (!line) throw new Error(`no line ${id}`);
    return line;
  });
}

const anyQuestions = anyLine.map((line) => ({ line, asked: questions(line) }));

describe('a line', () => {
  test('goes by its step, up or down, whatever is put in its gaps', () => {
    fc.assert(
      fc.property(anyQuestions, ({ line, asked }) => {
        for (const { shown, asked: place, answer } of asked) {
          const by = line.way === 'up' ? line.step : -line.step;
          shown.forEach((number, at) => {
            if (number !== null) expect(number).toBe(line.first + at * by);
          });
          if (place !== null) expect(answer).toBe(line.first + place * by);
        }
      }),
    );
  });

  test('asks for its two gaps and then for its rule', () => {
    fc.assert(
      fc.property(anyQuestions, ({ line, asked }) => {
        const [first, second, rule] = asked;
        expect(first?.shown.filter((number) => number === null)).toHaveLength(2);
        expect(second?.shown.filter((number) => number === null)).toHaveLength(1);
        expect(rule?.shown).not.toContain(null);
        expect(first?.shown[first.asked ?? -1]).toBeNull();
        expect(second?.shown[second.asked ?? -1]).toBeNull();
        expect(rule).toMatchObject({ asked: null, answer: line.step });
      }),
    );
  });

  test('always shows two numbers side by side, so that its rule can be told', () => {
    for (const shape of shapeNames) {
      const [first] = questions({ way: 'up', step: 5, first: 10, shape });
      const shown = first?.shown ?? [];
      expect(shown.some((number, at) => number !== null && typeof shown[at + 1] === 'number')).toBe(true);
    }
  });

  test('is read back as it was written', () => {
    fc.assert(
      fc.property(anyQuestions, ({ asked }) => {
        for (const { id } of asked) {
          expect(parseLine(id)?.id).toBe(id);
          expect(id).toMatch(/^[a-z\d-]+$/);
        }
      }),
    );
  });
});

test('five, ten, fifteen …', () => {
  expect(parseLine('line-up-5-5-a-0')).toMatchObject({
    shown: [5, 10, null, 20, null, 30],
    asked: 2,
    answer: 15,
  });
  expect(parseLine('line-down-3-30-c-1')).toMatchObject({
    shown: [30, 27, 24, 21, null, 15],
    asked: 4,
    answer: 18,
  });
});

test.each([
  'line-down-5-20-a-0',
  'line-up-12-100-a-0',
  'line-up-13-0-a-0',
  'line-up-0-0-a-0',
  'line-up-5-05-a-0',
  'line-up-5-5-e-0',
  'line-up-5-5-a-3',
  'line-left-5-5-a-0',
  'mul-7-8',
  'copy-5',
  '',
])('%s is no line', (id) => {
  expect(parseLine(id)).toBeNull();
});
