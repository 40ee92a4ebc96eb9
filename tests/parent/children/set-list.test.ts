import { expect, test } from 'vitest';
import { setById, teachingSets } from '../../../src/core/set/teaching-sets';
import {
  coveredFacts,
  findSet,
  ownSets,
  proposedSet,
  setName,
  tickedIn,
} from '../../../src/parent/children/set-list';
import { fakeDesk } from '../fake-desk';
import { twoChildren } from '../made-household';

const own = ['mul-7-8', 'mul-8-7', 'mul-6-7', 'mul-7-6', 'mul-8-6', 'mul-6-8'] as const;

test('with nothing known the first set of all is proposed', () => {
  expect(proposedSet(new Set())).toBe(teachingSets[0]);
});

test('the first set with a fact not known is proposed', () => {
  const [first, second] = teachingSets;
  const known = new Set(first?.facts);
  expect(proposedSet(known)?.id).toBe(second?.id);
  known.delete(first?.facts.at(-1) ?? 'add-0-0');
  expect(proposedSet(known)?.id).toBe(first?.id);
});

test('neither a mix nor a set of the 12s is proposed, and with all known there is none', () => {
  const known = new Set(
    teachingSets.flatMap((set) => (set.kind === 'group' && set.reach === 9 ? set.facts : [])),
  );
  expect(proposedSet(known)).toBeNull();
});

test('the current and the kept sets are not proposed again', () => {
  const desk = fakeDesk('2026-11-25', [
    ...twoChildren,
    { kind: 'setKept', child: 'wren', set: 'plus-0-and-1', kept: true },
  ]);
  const [wren] = desk.household.value.children;
  if (!wren) throw new Error('no Wren');
  const covered = coveredFacts(desk.household.value, wren);
  for (const set of ['plus-2', 'plus-0-and-1']) {
    for (const fact of setById(set)?.facts ?? []) expect(covered.has(fact)).toBe(true);
  }
  expect(proposedSet(covered)?.id).toBe('plus-0-and-1-larger');
});

test('a removed own set keeps its name for old sittings but is offered no more', () => {
  const desk = fakeDesk('2026-11-25', [
    { kind: 'setMade', set: 'own', name: 'Hard ones', facts: own },
    { kind: 'setMade', set: 'own', name: 'Hard ones', facts: own, removed: true },
  ]);
  expect(ownSets(desk.household.value)).toEqual([]);
  expect(findSet(desk.household.value, 'own')?.facts).toHaveLength(6);
  expect(setName(desk.household.value, 'own')).toBe('Hard ones');
  expect(setName(desk.household.value, 'nobody-knows')).toBe('a set this version does not know');
});

test('ticked facts are counted within the set alone', () => {
  const doubles = setById('doubles');
  if (!doubles) throw new Error('no doubles');
  expect(tickedIn(doubles, new Set(['add-2-2', 'add-3-3', 'add-2-3']))).toBe(2);
});

test('what is proposed goes by the parent’s own order', () => {
  expect(proposedSet(new Set(), ['doubles', 'plus-0-and-1'])?.id).toBe('doubles');
  const known = new Set(setById('doubles')?.facts);
  expect(proposedSet(known, ['doubles', 'plus-0-and-1'])?.id).not.toBe('doubles');
});
