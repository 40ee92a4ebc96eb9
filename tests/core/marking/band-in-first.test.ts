import { expect, test } from 'vitest';
import { bandInFirst, rightInFirst } from '../../../src/core/marking/band-in-first';
import { type Deed, facts, marked, sit } from './made-sat';

const all: readonly Deed[] = Array.from({ length: 25 }, () => 'right');

test('the first 45 s of an untimed sheet fall in the band of what was right in them', () => {
  const result = marked(sit(facts(25), all, {}, 3000));
  expect(rightInFirst(result, 45_000)).toBe(15);
  expect(bandInFirst(result, 45_000)).toBe('even');
  expect(bandInFirst(result, 44_999)).toBe('loose');
});

test('wrong answers and skips count nothing', () => {
  const deeds = all.map((deed, index): Deed => (index < 6 ? (index % 2 ? 'wrong' : 'skip') : deed));
  expect(rightInFirst(marked(sit(facts(25), deeds, {}, 3000)), 45_000)).toBe(9);
});

test('without times there is nothing to say', () => {
  expect(bandInFirst(marked(sit(facts(25), all, { keepTimes: false }, 3000)), 45_000)).toBeNull();
});
