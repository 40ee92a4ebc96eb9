import { expect, test } from 'vitest';
import { factsOf, operations } from '../../src/core/fact/fact-list';
import { writtenFact } from '../../src/core/fact/written';
import { lineIds, parseLine, shapeNames } from '../../src/core/gap-line/gap-line';
import { parseStory, settings } from '../../src/core/gap-line/story';
import { storyWords } from '../../src/core/gap-line/words';
import { answerTo } from './read-card';

test('every fact is answered from what it reads', () => {
  for (const fact of operations.flatMap((op) => factsOf(op, 12)))
    expect(answerTo(writtenFact(fact).replaceAll('\u00a0', ' '))).toBe(`${fact.answer}`);
});

test('every story is answered from its words', () => {
  let told = 0;
  for (const op of operations)
    for (const fact of factsOf(op, 12))
      for (const setting of settings[op]) {
        const story = parseStory(`story-${setting}-${fact.id}`);
        if (!story) continue;
        const { told: what, asked } = storyWords(story);
        expect(answerTo(`${what} ${asked}`)).toBe(`${story.answer}`);
        told += 1;
      }
  expect(told).toBeGreaterThan(1000);
});

test('every counting pattern is answered from its cells', () => {
  let asked = 0;
  for (const way of ['up', 'down'] as const)
    for (let step = 1; step <= 12; step += 1)
      for (const first of [0, 7, 60, 84])
        for (const line of shapeNames.flatMap((shape) => lineIds(way, step, first, shape))) {
          const parsed = parseLine(line);
          if (!parsed) continue;
          const cells = parsed.shown.map((number, place) =>
            place === parsed.asked ? '?' : (number ?? '_').toString(),
          );
          expect(answerTo(cells.join(' '))).toBe(`${parsed.answer}`);
          asked += 1;
        }
  expect(asked).toBeGreaterThan(500);
});

test('what nobody could answer is told', () => {
  expect(() => answerTo('Type, then press Done')).toThrow('Nothing to answer');
});
