import type { Fact, FactId } from '../core/fact/fact';
import { turnAround } from '../core/fact/family';
import type { Via } from '../core/record/sat';
import { turnAroundShare } from './assumptions';

/** The truth about a made child, which no reading may look at. Times in ms, shares and chances 0 to 1. */
export interface Traits {
  /** Sets the pace of counting and remembering. */
  readonly ageYears: number;
  /** The time to find the first key when nothing need be thought, between keys, and to *done*; `spread` of the logarithm. */
  readonly hand: {
    readonly firstKeyMs: number;
    readonly nextKeyMs: number;
    readonly doneMs: number;
    readonly spread: number;
  };
  readonly via: Via;
  /** How often a fact had been met before the first day; from about 60 on it is held in memory. */
  readonly before: (fact: Fact) => number;
  /** Exposures that one answered card stands for, its lesson included. */
  readonly learning: number;
  /** Chance of a right answer from memory, and of each step of counting. */
  readonly right: { readonly memory: number; readonly step: number };
  /** Share of cards answered in a hurry: carelessness. */
  readonly rushing: { readonly untimed: number; readonly timed: number };
  /** Share of cards counted over again. */
  readonly checking: number;
  /** Chance of skipping a fact not held in memory. */
  readonly skipping: number;
  /** Chance that a digit goes to the key beside it, and that this is seen and taken back in time. */
  readonly slipping: number;
  readonly noticing: number;
  /** What the clock does: added to log think time; taken from the chance of being right. */
  readonly clock: { readonly logThink: number; readonly accuracy: number };
  /** Added to log think time over the length of a sheet. */
  readonly tiring: number;
}

/** A made child's memory as it grows. */
export interface Mind {
  readonly traits: Traits;
  exposures(fact: Fact): number;
  /** The fact was answered and, if wrong, put right. */
  meet(fact: Fact): void;
  /** The same mind to try something out on. */
  copy(): Mind;
}

export function makeMind(traits: Traits, met: ReadonlyMap<FactId, number> = new Map()): Mind {
  const gained = new Map(met);
  const gain = ({ id }: Fact, exposures: number) => gained.set(id, (gained.get(id) ?? 0) + exposures);
  return {
    traits,
    exposures: (fact) => traits.before(fact) + (gained.get(fact.id) ?? 0),
    meet(fact) {
      gain(fact, traits.learning);
      const partner = turnAround(fact);
      if (partner) gain(partner, traits.learning * turnAroundShare);
    },
    copy: () => makeMind(traits, gained),
  };
}
