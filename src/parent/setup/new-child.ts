import { signal } from '@preact/signals';
import type { FactId, Operation } from '../../core/fact/fact';
import type { Draft } from '../../core/record/record';
import type { Id } from '../../core/record/stamp';
import type { FactSet } from '../../core/set/fact-set';

/** How the tool learns what a child knows: ticked by the parent, or asked in a spread over two days. */
export type KnownWay = 'tick' | 'spread';

/**
 * The child being set up: in memory only, so that a reload in mid-way leaves nothing half done. Outside the page, so
 * that neither the idle lock nor a step back loses what was typed.
 */
export const newChild = {
  /** Beside children already there: the way back is to the pages. */
  isAnother: signal(false),
  name: signal(''),
  edge: signal(0),
  way: signal<KnownWay>('tick'),
  marked: signal<ReadonlySet<FactId>>(new Set()),
  ops: signal<readonly Operation[]>(['add']),
  /** The set chosen; `null` takes the one proposed. */
  set: signal<FactSet | null>(null),
} as const;

/** Begins with an empty child; `edge` is the first woven edge shown. */
export function beginChild(edge: number, isAnother: boolean): void {
  newChild.isAnother.value = isAnother;
  newChild.name.value = '';
  newChild.edge.value = edge;
  newChild.way.value = 'tick';
  newChild.marked.value = new Set();
  newChild.ops.value = ['add'];
  newChild.set.value = null;
}

/** All that is recorded of a new child, in one go: with a set to begin with, or with a spread that will tell. */
export function childDrafts(child: Id, name: string, set: Id | null): readonly Draft[] {
  const { edge, marked, ops } = newChild;
  const added: Draft = { kind: 'childAdded', child, name, edge: edge.value };
  if (set === null) return [added, { kind: 'spreadAsked', child, ops: ops.value }];
  const facts = [...marked.value];
  return [
    added,
    ...(facts.length > 0 ? [{ kind: 'factsTicked', child, facts, known: true } as const] : []),
    { kind: 'setStarted', child, set },
  ];
}
