import type { Operation } from '../fact/fact';
import { factsOf, inverse, pairOf, type Reach } from '../fact/fact-list';
import type { Id } from '../record/stamp';
import type { FactSet } from './fact-set';
import { type PairRule, productGroups, sumGroups, type TeachingGroup } from './teaching-groups';

const isForward = (op: Operation) => op === 'add' || op === 'mul';

function groupSet(op: Operation, group: TeachingGroup): FactSet {
  const { forward, backward, reach = 9 } = group;
  const [[id, name], [counterpart]] = isForward(op) ? [forward, backward] : [backward, forward];
  const rule: PairRule = (isForward(op) ? null : group.backwardRule) ?? group.rule;
  const facts = factsOf(op, reach).filter((fact) => rule(...pairOf(fact)));
  return { id, name, op, kind: 'group', reach, facts: facts.map((fact) => fact.id), counterpart };
}

const mixNames: Readonly<Record<Operation, string>> = {
  add: 'All of plus',
  sub: 'All of take away',
  mul: 'All of times',
  div: 'All of divide',
};

function mixSet(op: Operation, reach: Reach): FactSet {
  const ending = reach === 12 ? '-to-12' : '';
  return {
    id: `mix-${op}${ending}`,
    name: mixNames[op] + (reach === 12 ? ', to 12' : ''),
    op,
    kind: 'mix',
    reach,
    facts: factsOf(op, reach).map((fact) => fact.id),
    counterpart: `mix-${inverse[op]}${ending}`,
  };
}

function setsOf(op: Operation): readonly FactSet[] {
  const sums = op === 'add' || op === 'sub';
  const groups = (sums ? sumGroups : productGroups).map((group) => groupSet(op, group));
  return [...groups, mixSet(op, 9), ...(sums ? [] : [mixSet(op, 12)])];
}

/** Every teaching set, those of the option to 12s too: +, −, ×, ÷, each in its default order, the mix last. */
export const teachingSets: readonly FactSet[] = (['add', 'sub', 'mul', 'div'] as const).flatMap(setsOf);

const byId: ReadonlyMap<Id, FactSet> = new Map(teachingSets.map((set) => [set.id, set]));

/** The teaching set of that id; `null` for any other, a parent's own too. */
export function setById(id: Id): FactSet | null {
  return byId.get(id) ?? null;
}

/** The set of the inverse operation that goes with a set; `null` for a parent's own. */
export function counterpartOf(set: FactSet): FactSet | null {
  return set.counterpart === null ? null : setById(set.counterpart);
}

/** The teaching sets of an operation in the order proposed to the parent, who can change it. */
export function defaultOrder(op: Operation, reach: Reach = 9): readonly FactSet[] {
  return teachingSets.filter((set) => set.op === op && set.reach <= reach);
}
