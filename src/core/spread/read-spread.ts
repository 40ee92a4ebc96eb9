import type { FactId, Operation } from '../fact/fact';
import { quickMs } from '../first-try/first-try';
import type { MarkedPlace } from '../marking/marked';
import { median } from '../marking/median';
import type { Id } from '../record/stamp';
import type { FactSet } from '../set/fact-set';
import { orderedSets } from '../set/set-order';
import { spreadGroups } from './spread-facts';

/** What a spread says of one group. */
export interface GroupSeen {
  readonly set: FactSet;
  readonly asked: number;
  readonly right: number;
  /** Median time to the first key less the hand time; `null` without times. */
  readonly thinkMs: number | null;
  /** All right, and half of them or more within about 3 s; without times all right is enough. */
  readonly isKnown: boolean;
}

/** What a spread proposes: groups to keep, their facts, and the group to begin with. */
export interface SpreadReading {
  readonly groups: readonly GroupSeen[];
  readonly kept: readonly FactSet[];
  readonly known: readonly FactId[];
  /** The first group that is not known yet; `null` when all are. */
  readonly current: FactSet | null;
}

/**
 * Reads the places of both days, as marked. An answer speaks for every group that holds its fact. `handMs`: the child's
 * hand time; `order`: the parent's own order of sets.
 */
export function readSpread(
  ops: readonly Operation[],
  places: readonly MarkedPlace[],
  handMs: number,
  order: readonly Id[],
): SpreadReading {
  const asked = places.filter(({ outcome }) => outcome !== 'notReached' && outcome !== 'unfinished');
  const groups = inOrder(spreadGroups(ops), order).map((set) => seeGroup(set, asked, handMs));
  const kept = groups.filter(({ isKnown }) => isKnown).map(({ set }) => set);
  return {
    groups,
    kept,
    known: [...new Set(kept.flatMap(({ facts }) => facts))],
    current: groups.find(({ isKnown }) => !isKnown)?.set ?? null,
  };
}

function seeGroup(set: FactSet, asked: readonly MarkedPlace[], handMs: number): GroupSeen {
  const facts: ReadonlySet<string> = new Set(set.facts);
  const own = asked.filter(({ prompt }) => facts.has(prompt));
  const right = own.filter(({ outcome }) => outcome === 'right').length;
  const keys = own.flatMap(({ firstKeyMs }) => (firstKeyMs === null ? [] : [firstKeyMs]));
  const firstMs = median(keys);
  const thinkMs = firstMs === null ? null : Math.max(0, firstMs - handMs);
  const isQuick = thinkMs === null || thinkMs < quickMs;
  return {
    set,
    asked: own.length,
    right,
    thinkMs,
    isKnown: own.length > 0 && right === own.length && isQuick,
  };
}

function inOrder(groups: readonly FactSet[], order: readonly Id[]): readonly FactSet[] {
  const ops = [...new Set(groups.flatMap(({ op }) => op ?? []))];
  const here = new Set(groups.map(({ id }) => id));
  return ops.flatMap((op) => orderedSets(op, 9, order).filter(({ id }) => here.has(id)));
}
