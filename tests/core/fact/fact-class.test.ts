import { expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { factClass } from '../../../src/core/fact/fact-class';
import { factsOf } from '../../../src/core/fact/fact-list';
import { familyOf } from '../../../src/core/fact/family';
import { known } from '../known';

test.each([
  ['add-0-7', 'zeroOrOne'],
  ['add-1-1', 'zeroOrOne'],
  ['sub-7-0', 'zeroOrOne'],
  ['sub-7-7', 'zeroOrOne'],
  ['sub-7-6', 'zeroOrOne'],
  ['mul-1-12', 'zeroOrOne'],
  ['div-0-7', 'zeroOrOne'],
  ['div-7-7', 'zeroOrOne'],
  ['add-6-6', 'tie'],
  ['sub-12-6', 'tie'],
  ['mul-2-2', 'tie'],
  ['div-49-7', 'tie'],
  ['add-2-3', 'withinTen'],
  ['add-4-6', 'withinTen'],
  ['sub-10-4', 'withinTen'],
  ['add-4-7', 'bridgingTen'],
  ['sub-17-9', 'bridgingTen'],
  ['mul-2-9', 'twosFivesTens'],
  ['mul-7-5', 'twosFivesTens'],
  ['div-30-3', 'twosFivesTens'],
  ['mul-3-4', 'threesFours'],
  ['div-36-9', 'threesFours'],
  ['div-36-4', 'threesFours'],
  ['mul-7-8', 'sixesUp'],
  ['div-132-12', 'sixesUp'],
])('%s is %s', (id, expected) => {
  expect(factClass(known(id))).toBe(expected);
});

test('a family has one class', () => {
  for (const op of ['add', 'sub', 'mul', 'div'] satisfies Operation[]) {
    for (const fact of factsOf(op, 12)) {
      const classes = new Set(familyOf(fact).map(factClass));
      expect([fact.id, classes.size]).toEqual([fact.id, 1]);
    }
  }
});

test('every class of an operation has at least four facts, so that a twin can be found', () => {
  for (const op of ['add', 'sub', 'mul', 'div'] satisfies Operation[]) {
    const counts = new Map<string, number>();
    for (const fact of factsOf(op)) counts.set(factClass(fact), (counts.get(factClass(fact)) ?? 0) + 1);
    expect(Math.min(...counts.values())).toBeGreaterThanOrEqual(4);
    expect(counts.size).toBe(op === 'add' || op === 'sub' ? 4 : 5);
  }
});
