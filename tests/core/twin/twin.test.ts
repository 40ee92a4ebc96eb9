import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fact, FactId, Operation } from '../../../src/core/fact/fact';
import { factClass } from '../../../src/core/fact/fact-class';
import { factsOf, isBasic } from '../../../src/core/fact/fact-list';
import { familyOf } from '../../../src/core/fact/family';
import type { FactSummary } from '../../../src/core/summary/summary';
import { type TwinSource, twinOf, twinsOf } from '../../../src/core/twin/twin';
import { known } from '../known';

const everyFact = (['add', 'sub', 'mul', 'div'] satisfies Operation[]).flatMap((op) => factsOf(op, 12));
const anyFact = fc.constantFrom(...everyFact);
const nothing: TwinSource = { facts: new Map(), avoid: new Set() };

function met(recent: string): FactSummary {
  return {
    rightDays: 0,
    firstRight: null,
    lastRight: [],
    seen: recent.length,
    lastSeen: '2026-03-02',
    recent,
  };
}

function knowing(marks: Readonly<Record<string, string>>): TwinSource {
  const facts = Object.entries(marks).map(([id, recent]) => [id as FactId, met(recent)] as const);
  return { facts: new Map(facts), avoid: new Set() };
}

const anyChild: fc.Arbitrary<TwinSource> = fc.record({
  facts: fc
    .uniqueArray(
      fc.tuple(
        anyFact.map(({ id }) => id),
        fc.stringMatching(/^[01]{1,8}$/),
      ),
      { selector: ([id]) => id, maxLength: 60 },
    )
    .map((facts) => new Map(facts.map(([id, recent]) => [id, met(recent)]))),
  avoid: fc
    .uniqueArray(
      anyFact.map(({ id }) => id),
      { maxLength: 40 },
    )
    .map((ids) => new Set(ids)),
});

describe('whatever is known of the child', () => {
  const check = (law: (fact: Fact, twin: Fact, child: TwinSource) => void) =>
    fc.assert(
      fc.property(anyFact, anyChild, (fact, child) => {
        const twin = twinOf(fact, child);
        expect(twin).not.toBeNull();
        if (twin) law(fact, twin, child);
      }),
      { numRuns: 2000 },
    );

  test('a twin is never the same fact, nor one of its family', () => {
    check((fact, twin) => {
      expect(twin.id).not.toBe(fact.id);
      expect(familyOf(fact).map(({ id }) => id)).not.toContain(twin.id);
    });
  });

  test('a twin is always the same kind: operation and class', () => {
    check((fact, twin) => {
      expect(twin.op).toBe(fact.op);
      expect(factClass(twin)).toBe(factClass(fact));
    });
  });

  test('a twin reaches past the basic facts only where the fact does or the child has been', () => {
    check((fact, twin, { facts }) => {
      if (isBasic(fact.id) && !facts.has(twin.id)) expect(isBasic(twin.id)).toBe(true);
    });
  });

  test('a twin to be avoided is given only where every other one is to be avoided too', () => {
    check((fact, twin, { avoid }) => {
      if (!avoid.has(twin.id)) return;
      const family = familyOf(fact);
      const others = factsOf(fact.op, isBasic(fact.id) ? 9 : 12).filter(
        (other) => factClass(other) === factClass(fact) && !family.some(({ id }) => id === other.id),
      );
      expect(others.every(({ id }) => avoid.has(id))).toBe(true);
    });
  });

  test('the same fact and child give the same twin', () => {
    check((fact, twin, child) => {
      const again = { ...child, facts: new Map([...child.facts].toReversed()) };
      expect(twinOf(fact, again)?.id).toBe(twin.id);
    });
  });
});

describe('the twins of a morning', () => {
  const missed = fc.uniqueArray(anyFact, { selector: ({ id }) => id, maxLength: 8 });

  test('are one for each miss, of its kind', () => {
    fc.assert(
      fc.property(missed, anyChild, (facts, child) => {
        const twins = twinsOf(facts, child);
        expect(twins.map((twin) => twin && [twin.op, factClass(twin)])).toEqual(
          facts.map((fact) => [fact.op, factClass(fact)]),
        );
      }),
    );
  });

  test('are neither misses themselves nor twice the same, as long as the class has others', () => {
    fc.assert(
      fc.property(missed, (facts) => {
        const ids = facts.map(({ id }) => id);
        const twins = twinsOf(facts, nothing);
        twins.forEach((twin, index) => {
          const before = [...ids, ...twins.slice(0, index).map((other) => other?.id)];
          if (!twin || !before.includes(twin.id)) return;
          const kin = factsOf(twin.op, 9).filter((other) => factClass(other) === factClass(twin));
          const family = familyOf(facts[index] ?? twin).map(({ id }) => id);
          expect(kin.every(({ id }) => before.includes(id) || family.includes(id))).toBe(true);
        });
      }),
    );
  });

  test('of none are none', () => {
    expect(twinsOf([], nothing)).toEqual([]);
  });
});

test('every fact of the tool has a twin, of a child nobody knows anything of', () => {
  expect(everyFact.filter((fact) => twinOf(fact, nothing) === null)).toEqual([]);
});

test('even with every fact to be avoided there is one', () => {
  const avoid = new Set(everyFact.map(({ id }) => id));
  expect(everyFact.filter((fact) => twinOf(fact, { ...nothing, avoid }) === null)).toEqual([]);
});

describe('the nearest', () => {
  test('is one the child has met, though another lies nearer', () => {
    expect(twinOf(known('mul-7-8'), knowing({ 'mul-6-9': '10' }))?.id).toBe('mul-6-9');
    expect(twinOf(known('mul-7-8'), nothing)?.id).toBe('mul-6-8');
  });

  test('is one known about as well as the fact missed', () => {
    const child = knowing({ 'mul-7-8': '1100', 'mul-6-8': '11111111', 'mul-9-6': '1010', 'mul-7-9': '0000' });
    expect(twinOf(known('mul-7-8'), child)?.id).toBe('mul-9-6');
  });

  test('is among those known alike the nearest in numbers, whichever way round', () => {
    const child = knowing({ 'add-5-9': '11', 'add-9-8': '11', 'add-6-8': '11' });
    expect(twinOf(known('add-7-9'), child)?.id).toBe('add-9-8');
  });

  test('for a fact with 0 is another with 0, and with 1 another with 1', () => {
    expect(twinOf(known('mul-0-7'), nothing)?.answer).toBe(0);
    expect(twinOf(known('mul-1-7'), nothing)?.id).toMatch(/^mul-(1-[68]|[68]-1)$/);
    expect(twinOf(known('add-6-0'), nothing)?.id).toMatch(/-0-|-0$/);
  });

  test('does not take back what was just put right', () => {
    const child = knowing({ 'sub-13-5': '01', 'sub-13-8': '01', 'sub-14-8': '11' });
    expect(twinOf(known('sub-13-5'), child)?.id).toBe('sub-14-8');
  });
});
