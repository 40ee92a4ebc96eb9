import { describe, expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { isTellable, parseStory, type Setting, type Story, settings } from '../../../src/core/gap-line/story';
import { storyWords } from '../../../src/core/gap-line/words';
import { known } from '../known';

const operations = ['add', 'sub', 'mul', 'div'] satisfies Operation[];
const stories = operations.flatMap((op) =>
  factsOf(op, 12)
    .filter(isTellable)
    .flatMap((fact) => settings[op].map((setting) => parseStory(`story-${setting}-${fact.id}`)))
    .filter((story): story is Story => story !== null),
);
const words = (id: string) => {
  const story = parseStory(id);
  return story && storyWords(story);
};

/** What happens in each setting, told a second time: how its answer comes from the numbers in its words. */
const happens: Readonly<Record<Setting, (first: number, second: number) => number>> = {
  bowl: (has, more) => has + more,
  shells: (has, more) => has + more,
  coat: (has, more) => has + more,
  candles: (has, gone) => has - gone,
  pegs: (has, gone) => has - gone,
  seeds: (has, gone) => has - gone,
  jars: (jars, each) => jars * each,
  tiles: (rows, each) => rows * each,
  bags: (bags, each) => bags * each,
  plates: (all, plates) => all / plates,
  boxes: (all, each) => all / each,
  ribbon: (all, pieces) => all / pieces,
};

describe('a story', () => {
  test('is there in every setting for every fact that can be told', () => {
    const tellable = operations.flatMap((op) => factsOf(op, 12).filter(isTellable));
    expect(stories).toHaveLength(3 * tellable.length);
    expect(tellable.length).toBeGreaterThan(390);
  });

  test('names its two numbers once each, and what happens to them gives the fact’s answer', () => {
    for (const story of stories) {
      const numbers = (storyWords(story).told.match(/\d+/g) ?? []).map(Number);
      expect(numbers).toEqual([story.fact.a, story.fact.b]);
      expect(happens[story.setting](story.fact.a, story.fact.b)).toBe(story.answer);
      expect(story.answer).toBe(story.fact.answer);
    }
  });

  test('asks for its unit by name, and gives no number away in asking', () => {
    for (const story of stories) {
      const { asked, unit } = storyWords(story);
      expect(asked).toContain(unit);
      expect(asked).toMatch(/^How many .*\?$/);
      expect(asked).not.toMatch(/\d/);
    }
  });

  test('has plain, short sentences, one of a thing never as many', () => {
    for (const story of stories) {
      const { told } = storyWords(story);
      for (const sentence of told.split('. ')) expect(sentence.split(' ').length).toBeLessThanOrEqual(10);
      expect(told).not.toMatch(/\b1 (plums|shells|buttons|candles|pegs|seeds)\b/);
      expect(told).toMatch(/^[A-Z].*\.$/);
    }
  });

  test('reads as a story', () => {
    expect(words('story-jars-mul-3-4')).toEqual({
      told: 'You fill 3 jars. You put 4 buttons in each.',
      asked: 'How many buttons is that?',
      unit: 'buttons',
    });
    expect(words('story-boxes-div-24-6')?.told).toBe('You have 24 eggs. Each box holds 6 of them.');
    expect(words('story-bowl-add-1-7')?.told).toBe('You put 1 plum in a bowl. Then you put in 7 more.');
  });
});

test('nothing put in, nothing left, one lot and sharing with nobody are no stories', () => {
  for (const id of ['add-0-4', 'add-4-0', 'sub-7-0', 'sub-7-7', 'mul-1-6', 'mul-6-0', 'div-6-1', 'div-0-4']) {
    expect(isTellable(known(id))).toBe(false);
  }
  expect(isTellable(known('div-6-6'))).toBe(true);
});

test.each([
  'story-jars-add-3-4',
  'story-jars-mul-0-4',
  'story-moon-mul-3-4',
  'story-jars',
  'mul-3-4',
  'story-jars-mul-3',
])('%s is no story', (id) => {
  expect(parseStory(id)).toBeNull();
});
