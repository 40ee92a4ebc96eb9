import { describe, expect, test } from 'vitest';
import type { Fact, Operation } from '../../../src/core/fact/fact';
import { factsOf, inverse, type Reach } from '../../../src/core/fact/fact-list';
import { familyOf } from '../../../src/core/fact/family';
import { setSize } from '../../../src/core/set/fact-set';
import { counterpartOf, defaultOrder, setById, teachingSets } from '../../../src/core/set/teaching-sets';
import { known } from '../known';

const operations: readonly Operation[] = ['add', 'sub', 'mul', 'div'];
const groups = teachingSets.filter((set) => set.kind === 'group');
const factsIn = (id: string): readonly string[] => setById(id)?.facts ?? [];

describe('every fact', () => {
  test.each(operations.flatMap((op) => ([9, 12] as const).map((reach) => [op, reach] as const)))(
    '%s to %i is in at least one teaching group',
    (op, reach: Reach) => {
      const taught = new Set(
        defaultOrder(op, reach)
          .filter((set) => set.kind === 'group')
          .flatMap((set) => set.facts),
      );
      expect(
        factsOf(op, reach)
          .map((fact) => fact.id)
          .filter((id) => !taught.has(id)),
      ).toEqual([]);
    },
  );

  test('of a set belongs to its operation and reach, and stands in it once', () => {
    for (const set of teachingSets) {
      const allowed = set.op ? factsOf(set.op, set.reach).map((fact) => fact.id) : [];
      expect(allowed).toEqual(expect.arrayContaining([...set.facts]));
      expect(new Set(set.facts).size).toBe(set.facts.length);
    }
  });
});

describe('a teaching group', () => {
  test.each(groups.map((set) => [set.id, set.facts.length]))('%s holds 6 to 20 facts (%i)', (_, size) => {
    expect(size).toBeGreaterThanOrEqual(setSize.least);
    expect(size).toBeLessThanOrEqual(setSize.most);
  });

  test.each(groups.map((set) => [set.id, set] as const))(
    '%s never makes one answer more than half of its sheet',
    (_, set) => {
      const answers = set.facts.map((id) => known(id).answer);
      const most = Math.max(...answers.map((answer) => answers.filter((other) => other === answer).length));
      expect(most).toBeLessThanOrEqual(Math.ceil(answers.length / 2));
    },
  );

  test('of + or × holds the turn-around of each of its facts', () => {
    for (const set of groups.filter(({ op }) => op === 'add' || op === 'mul')) {
      const swapped = set.facts.map((id) => `${set.op}-${known(id).b}-${known(id).a}`);
      expect(swapped.toSorted()).toEqual([...set.facts].toSorted());
    }
  });

  test('holds what its name says', () => {
    const all = (id: string, holds: (fact: Fact) => boolean) =>
      expect([id, setById(id)?.facts.filter((fact) => !holds(known(fact)))]).toEqual([id, []]);
    for (const n of [2, 3, 8, 9]) all(`plus-${n}`, ({ a, b }) => a === n || b === n);
    for (const n of [2, 8, 9]) all(`take-away-${n}`, ({ b }) => b === n);
    for (const n of [2, 3, 4, 5, 6, 7, 8, 9]) {
      all(`times-${n}`, ({ a, b }) => a === n || b === n);
      all(`divide-by-${n}`, ({ b }) => b === n);
    }
    for (const n of [10, 11, 12]) {
      all(`times-${n}`, ({ a, b }) => a === n || b === n);
      all(`divide-by-${n}`, ({ b, answer }) => b === n || answer === n);
    }
    for (const id of ['plus-0-and-1', 'plus-0-and-1-larger', 'times-0-and-1', 'times-0-and-1-larger']) {
      all(id, ({ a, b }) => Math.min(a, b) <= 1);
    }
    all('take-away-0-and-1', ({ b, answer }) => Math.min(b, answer) <= 1);
    all('take-away-3', ({ b, answer }) => b === 3 || answer === 2 || answer === 3);
    all('doubles', ({ a, b }) => a === b);
    all('halves', ({ a, answer }) => a === 2 * answer);
    all('near-doubles', ({ a, b }) => Math.abs(a - b) === 1);
    all('near-halves', ({ b, answer }) => Math.abs(b - answer) === 1);
    all('makes-ten', ({ answer }) => answer >= 9 && answer <= 11);
    all('from-ten', ({ a }) => a === 10);
    all('past-ten', ({ answer }) => answer > 10);
    all('from-past-ten', ({ a, answer }) => a > 10 && answer < 10);
    all('squares-to-12', ({ a, b }) => a === b);
    all('from-squares-to-12', ({ b, answer }) => b === answer);
  });

  test('leaves nothing out that its name promises', () => {
    expect(factsIn('doubles')).toHaveLength(10);
    expect(factsIn('squares')).toHaveLength(10);
    expect(factsIn('squares-to-12')).toHaveLength(13);
    expect(factsIn('makes-ten').filter((id) => known(id).answer === 10)).toHaveLength(7);
    expect(factsIn('from-ten')).toHaveLength(9);
    expect(factsIn('times-5')).toHaveLength(17);
    expect(factsIn('divide-by-5')).toHaveLength(9);
    expect(factsIn('times-7')).toEqual(expect.arrayContaining(['mul-7-8', 'mul-8-7', 'mul-7-7', 'mul-7-1']));
    expect(factsIn('times-12')).toEqual(expect.arrayContaining(['mul-12-2', 'mul-11-12']));
  });
});

describe('a name', () => {
  test('is its set’s alone, and so is the id', () => {
    expect(new Set(teachingSets.map((set) => set.id)).size).toBe(teachingSets.length);
    expect(new Set(teachingSets.map((set) => set.name)).size).toBe(teachingSets.length);
  });

  test('is never a letter, a rank or the number of a level', () => {
    for (const { name } of teachingSets) {
      expect(name).not.toMatch(/\b[A-Z]\b|level|stage|step|grade|belt|rank|easy|hard|set \d/i);
      expect(name).toMatch(/^[A-Z][a-z]+/);
    }
  });

  test('has an id that is safe in a path', () => {
    for (const { id } of teachingSets) expect(id).toMatch(/^[a-z0-9-]+$/);
  });
});

describe('a counterpart', () => {
  test.each(teachingSets.map((set) => [set.id, set] as const))(
    '%s has one of the inverse operation',
    (_, set) => {
      const other = counterpartOf(set);
      expect(other && set.op && other.op === inverse[set.op]).toBe(true);
      expect(other && counterpartOf(other)).toBe(set);
      expect([other?.kind, other?.reach]).toEqual([set.kind, set.reach]);
    },
  );

  test('asks no family that the sets before it have not met', () => {
    for (const op of ['add', 'mul'] as const) {
      const met = new Set<string>();
      for (const set of defaultOrder(op)) {
        for (const id of set.facts) for (const member of familyOf(known(id))) met.add(member.id);
        const unmet = counterpartOf(set)?.facts.filter((id) => !met.has(id));
        expect([set.id, unmet]).toEqual([set.id, []]);
      }
    }
  });

  test('stands where its partner stands in the order', () => {
    for (const op of ['add', 'mul'] as const) {
      const partners = defaultOrder(op, 12).map((set) => set.counterpart);
      expect(defaultOrder(inverse[op], 12).map((set) => set.id)).toEqual(partners);
    }
  });
});

describe('the mix', () => {
  test.each([
    ['mix-add', 100],
    ['mix-sub', 100],
    ['mix-mul', 100],
    ['mix-div', 90],
    ['mix-mul-to-12', 169],
    ['mix-div-to-12', 156],
  ])('%s is all %i facts', (id, count) => {
    expect(setById(id)?.kind).toBe('mix');
    expect(factsIn(id)).toHaveLength(count);
  });

  test('comes last', () => {
    for (const op of operations) expect(defaultOrder(op).at(-1)?.id).toBe(`mix-${op}`);
  });
});

describe('the default order', () => {
  test('holds the basic sets unless 12s are asked for', () => {
    for (const op of operations) {
      expect(defaultOrder(op).every((set) => set.reach === 9 && set.op === op)).toBe(true);
      expect(defaultOrder(op, 12)).toEqual(teachingSets.filter((set) => set.op === op));
    }
  });

  test('adds nothing to + and − for 12s', () => {
    expect(defaultOrder('add', 12)).toEqual(defaultOrder('add'));
    expect(defaultOrder('sub', 12)).toEqual(defaultOrder('sub'));
  });
});

test('an id of no teaching set finds none', () => {
  expect(setById('own-3f2a')).toBeNull();
  expect(setById('')).toBeNull();
});
