import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/fact/fact';
import { firstTryFacts, readFirstTry } from '../../../src/core/first-try/first-try';
import { markSat } from '../../../src/core/marking/mark-sat';
import { noRulings } from '../../../src/core/marking/sat-rulings';
import type { Sat } from '../../../src/core/record/sat';
import { defaultChildSettings } from '../../../src/core/record/settings';
import { teachingSets } from '../../../src/core/set/teaching-sets';
import { satOf, visit } from '../household/made-records';
import { knownOn } from '../known';

const nobody = { facts: new Map(), ticked: new Set<FactId>() };
const anySet = fc.constantFrom(...teachingSets.map(({ facts }) => facts));

describe('the pass', () => {
  test('is over every fact of a new set once, the same from the same seed', () => {
    fc.assert(
      fc.property(anySet, fc.nat(), (set, seed) => {
        const facts = firstTryFacts(set, nobody, 200, seed);
        expect(facts.toSorted()).toEqual(set.toSorted());
        expect(firstTryFacts(set, nobody, 200, seed)).toEqual(facts);
      }),
    );
  });

  test('leaves out what was answered before and what the parent ticked', () => {
    fc.assert(
      fc.property(anySet, fc.nat(), fc.nat(9), fc.nat(9), (set, seed, answered, ticked) => {
        const met = set.slice(0, answered);
        const known = set.slice(answered, answered + ticked);
        const source = {
          facts: new Map(met.map((fact) => [fact, knownOn('2026-03-01')] as const)),
          ticked: new Set(known),
        };
        const facts = firstTryFacts(set, source, 200, seed);
        expect(facts.toSorted()).toEqual(set.slice(answered + ticked).toSorted());
      }),
    );
  });

  test('is no longer than asked for, and what is left comes another day until none is', () => {
    fc.assert(
      fc.property(anySet, fc.integer({ min: 5, max: 30 }), (set, most) => {
        const tried = new Set<FactId>();
        for (let day = 0; day < 40; day += 1) {
          const source = {
            facts: new Map([...tried].map((fact) => [fact, knownOn('2026-03-01')] as const)),
            ticked: new Set<FactId>(),
          };
          const facts = firstTryFacts(set, source, most, day);
          expect(facts.length).toBe(Math.min(most, set.length - tried.size));
          for (const fact of facts) tried.add(fact);
        }
        expect(tried.size).toBe(set.length);
      }),
    );
  });
});

describe('what it says', () => {
  const answers = [
    ['mul-6-7', '42'],
    ['mul-6-8', '46'],
    ['mul-6-9', null],
    ['mul-6-6', '36'],
  ] as const;
  const read = (over: Partial<Sat> = {}, handMs = 0) => {
    const sat = satOf('ann', '2026-03-02', 1, answers, { purpose: 'firstTry', ...over });
    return readFirstTry(markSat(sat, noRulings, defaultChildSettings.limits).places, handMs);
  };

  test('right is the child’s already; wrong and skipped is to be taught', () => {
    expect(read()).toEqual({
      yours: ['mul-6-7', 'mul-6-6'],
      slow: [],
      toTeach: ['mul-6-8', 'mul-6-9'],
      notReached: [],
    });
  });

  test('right after more than 3 s of thinking is the child’s too, and said to be slow', () => {
    const slow = visit(3, '36');
    const late = { ...slow, keys: slow.keys.map(([key, at, via]) => [key, (at ?? 0) + 2500, via] as const) };
    const visits = [...[0, 1, 2].map((place) => visit(place, answers[place]?.[1] ?? null)), late];
    expect(read({ visits }).slow).toEqual(['mul-6-6']);
    expect(read({ visits }).yours).toContain('mul-6-6');
    // 3.4 s to the first key less 600 ms of the hand is under three.
    expect(read({ visits }, 600).slow).toEqual([]);
  });

  test('without times nothing is slow', () => {
    const visits = answers.map(([, given], place) => {
      const made = visit(place, given);
      return {
        ...made,
        onsetMs: null,
        endMs: null,
        keys: made.keys.map(([key, , via]) => [key, null, via] as const),
      };
    });
    expect(read({ visits, keepTimes: false })).toMatchObject({ yours: ['mul-6-7', 'mul-6-6'], slow: [] });
  });

  test('a pass broken off says nothing of what it did not reach', () => {
    const visits = [visit(0, '42')];
    expect(read({ visits, ended: 'torn' })).toEqual({
      yours: ['mul-6-7'],
      slow: [],
      toTeach: [],
      notReached: ['mul-6-8', 'mul-6-9', 'mul-6-6'],
    });
  });
});
