import type { FactId } from '../../../src/core/fact/fact';
import type { FactState } from '../../../src/readings/facts/fact-reading';
import { readFacts } from '../../../src/readings/facts/read-facts';
import { readSittings } from '../../../src/readings/sitting-verdict/read-sittings';
import type { VerdictName } from '../../../src/readings/sitting-verdict/verdict';
import type { Chance } from './chance';
import { calmChild, type MadeChild } from './made-child';
import { type DayOrder, logOf, runOf } from './run';

/** Every verdict, in the order of the tables. */
export const verdictNames = [
  'flustered',
  'notKnown',
  'new',
  'rushed',
  'slowHands',
  'checking',
  'fine',
  'cannotTell',
] as const satisfies readonly VerdictName[];

/**
 * In how many runs each verdict was given of some sheet with the clock, and of the last one. Called flustered counts too
 * where it stands only after the last sheet of all.
 */
export interface Verdicts {
  readonly runs: number;
  readonly ever: ReadonlyMap<VerdictName, number>;
  readonly last: ReadonlyMap<VerdictName, number>;
}

/** Reads runs of one kind of child, one a seed. */
export function verdictsOf(
  make: (chance: Chance) => MadeChild,
  seeds: readonly number[],
  order: DayOrder,
): Verdicts {
  const [ever, last] = [new Map<VerdictName, number>(), new Map<VerdictName, number>()];
  for (const seed of seeds) {
    const { sittings, flustered } = readSittings(runOf(make, seed, order).log);
    const timed = sittings.filter((reading) => reading.timed);
    const names = timed.flatMap(({ verdicts }) => verdicts.map(({ name }) => name));
    count(ever, new Set([...names, ...(flustered ? [flustered.name] : [])]));
    count(last, new Set(timed.at(-1)?.verdicts.map(({ name }) => name)));
  }
  return { runs: seeds.length, ever, last };
}

function count<T>(into: Map<T, number>, names: Iterable<T>): void {
  for (const name of names) into.set(name, (into.get(name) ?? 0) + 1);
}

/** A set of facts of which some have the strength asked about, the others are known. */
export interface FactCell {
  /** Chance of a right answer, and how often it was met: few meetings are counted, many remembered. */
  readonly right: number;
  readonly exposures: number;
  /** One fact of the set, or all of it. */
  readonly which: 'one' | 'all';
}

/** How often facts of one strength were called what, at the end of a run and after any sheet of it. */
export interface FactStates {
  readonly facts: number;
  readonly atEnd: ReadonlyMap<FactState, number>;
  readonly everQuick: number;
}

/** Reads the facts asked about after each sheet of a run, the clock on every other day. */
export function factStatesOf({ right, exposures, which }: FactCell, seeds: readonly number[]): FactStates {
  const atEnd = new Map<FactState, number>();
  let [facts, everQuick] = [0, 0];
  for (const seed of seeds) {
    const asked = new Set<FactId>();
    const make = (chance: Chance): MadeChild => {
      const child = calmChild(chance);
      const [one] = chance.shuffled(child.setFacts);
      for (const fact of which === 'all' ? child.setFacts : one ? [one] : []) asked.add(fact);
      const own = { right, exposures };
      return { ...child, strengthOf: (fact) => (asked.has(fact.id) ? own : child.strengthOf(fact)) };
    };
    const { made, log } = runOf(make, seed);
    const quick = new Set<FactId>();
    const sats = log.sats.map(({ ruled }) => ruled.sat);
    for (let upTo = 2; upTo <= sats.length; upTo += 1) {
      const readings = readFacts(logOf(made, sats.slice(0, upTo)));
      for (const fact of asked) {
        const state = readings.get(fact)?.state ?? 'notEnough';
        if (state === 'quick') quick.add(fact);
        if (upTo === sats.length) atEnd.set(state, (atEnd.get(state) ?? 0) + 1);
      }
    }
    facts += asked.size;
    everQuick += quick.size;
  }
  return { facts, atEnd, everQuick };
}
