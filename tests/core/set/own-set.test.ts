import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { factsOf } from '../../../src/core/fact/fact-list';
import { checkOwnSet, longestSetName, ownSet } from '../../../src/core/set/own-set';

const everyId = (['add', 'sub', 'mul', 'div'] as const).flatMap((op) =>
  factsOf(op, 12).map((fact) => fact.id),
);
const six: readonly FactId[] = ['mul-6-7', 'mul-7-6', 'mul-6-8', 'mul-8-6', 'mul-7-8', 'mul-8-7'];

describe('a parent’s own set', () => {
  test('of 6 to 20 facts of the tool, with a name, has no fault', () => {
    fc.assert(
      fc.property(fc.subarray(everyId, { minLength: 6, maxLength: 20 }), (facts) => {
        expect(checkOwnSet('The stubborn ones', facts)).toEqual([]);
      }),
    );
  });

  test('needs a name, and not too long a one', () => {
    expect(checkOwnSet('', six)).toEqual(['noName']);
    expect(checkOwnSet('  \t', six)).toEqual(['noName']);
    expect(checkOwnSet('n'.repeat(longestSetName), six)).toEqual([]);
    expect(checkOwnSet('n'.repeat(longestSetName + 1), six)).toEqual(['longName']);
  });

  test('needs facts', () => {
    expect(checkOwnSet('Empty', [])).toEqual(['noFacts']);
  });

  test('of 5 is too small and of 21 too large', () => {
    expect(checkOwnSet('Five', six.slice(0, 5))).toEqual(['tooFew']);
    expect(checkOwnSet('Twenty', everyId.slice(0, 20))).toEqual([]);
    expect(checkOwnSet('Twenty-one', everyId.slice(0, 21))).toEqual(['tooMany']);
  });

  test('counts no fact twice', () => {
    expect(checkOwnSet('Twice', [...six, 'mul-6-7'])).toEqual(['repeated']);
  });

  test('takes no fact that the tool does not know', () => {
    expect(checkOwnSet('Beyond', [...six, 'mul-13-2'])).toEqual(['unknownFact']);
    expect(checkOwnSet('Beyond', [...six, 'nonsense'])).toEqual(['unknownFact']);
  });

  test('tells all its faults at once', () => {
    expect(checkOwnSet(' ', ['mul-13-2', 'mul-13-2'])).toEqual([
      'noName',
      'unknownFact',
      'repeated',
      'tooFew',
    ]);
  });

  test('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.string()), (name, facts) => {
        expect(checkOwnSet(name, facts).length).toBeGreaterThan(0);
      }),
    );
  });
});

describe('an own set', () => {
  test('is of one operation where all its facts are', () => {
    expect(ownSet('own-1', ' Sixes to eights ', six)).toEqual({
      id: 'own-1',
      name: 'Sixes to eights',
      op: 'mul',
      kind: 'own',
      reach: 9,
      facts: six,
      counterpart: null,
    });
  });

  test('may mix operations', () => {
    expect(ownSet('own-1', 'Mixed', [...six, 'div-42-6']).op).toBeNull();
  });

  test('reaches to 12 where one fact does', () => {
    expect(ownSet('own-1', 'Far', [...six, 'mul-12-6']).reach).toBe(12);
  });

  test('leaves out of old data what is not known or comes twice', () => {
    const old: readonly FactId[] = ['mul-6-7', 'mul-99-2', 'mul-6-7', 'mul-7-6'];
    expect(ownSet('own-1', 'Old', old).facts).toEqual(['mul-6-7', 'mul-7-6']);
    expect(ownSet('own-1', 'Old', ['mul-99-2'])).toMatchObject({ op: null, facts: [] });
  });
});
