import { describe, expect, test } from 'vitest';
import type { Operation } from '../../../src/core/fact/fact';
import { factsOf, knownFact } from '../../../src/core/fact/fact-list';
import { familyOf, turnAround } from '../../../src/core/fact/family';
import { known } from '../known';

const everyFact = (['add', 'sub', 'mul', 'div'] satisfies Operation[]).flatMap((op) => factsOf(op, 12));
const familyIds = (id: string) => familyOf(known(id)).map((fact) => fact.id);

describe('a turn-around', () => {
  test('has the operands swapped', () => {
    expect(turnAround(known('mul-7-8'))?.id).toBe('mul-8-7');
    expect(turnAround(known('add-0-9'))?.id).toBe('add-9-0');
  });

  test('is none for ties, − and ÷', () => {
    for (const id of ['mul-7-7', 'add-0-0', 'sub-9-4', 'div-56-7']) expect(turnAround(known(id))).toBeNull();
  });

  test('turned around again is the fact itself, with the same answer', () => {
    for (const fact of everyFact) {
      const partner = turnAround(fact);
      if (!partner) continue;
      expect(turnAround(partner)).toEqual(fact);
      expect(partner.answer).toBe(fact.answer);
    }
  });
});

describe('a family', () => {
  test('is two facts and the two that take them back', () => {
    const sevenEights = ['mul-7-8', 'mul-8-7', 'div-56-8', 'div-56-7'];
    expect(familyIds('mul-7-8').toSorted()).toEqual(sevenEights.toSorted());
    expect(familyIds('add-9-5').toSorted()).toEqual(
      ['add-9-5', 'add-5-9', 'sub-14-5', 'sub-14-9'].toSorted(),
    );
  });

  test('is two facts for a tie', () => {
    expect(familyIds('mul-7-7')).toEqual(['mul-7-7', 'div-49-7']);
    expect(familyIds('sub-12-6')).toEqual(['add-6-6', 'sub-12-6']);
  });

  test('never divides by zero', () => {
    expect(familyIds('mul-0-7').toSorted()).toEqual(['div-0-7', 'mul-0-7', 'mul-7-0']);
    expect(familyIds('mul-0-0')).toEqual(['mul-0-0']);
  });

  test('is the same whichever of its facts is asked', () => {
    for (const fact of everyFact) {
      const family = familyOf(fact);
      expect(family).toContainEqual(fact);
      for (const member of family) {
        const ids = (of: typeof fact) =>
          familyOf(of)
            .map(({ id }) => id)
            .toSorted();
        expect(ids(member)).toEqual(ids(fact));
        expect(knownFact(member.id)).not.toBeNull();
      }
    }
  });
});
