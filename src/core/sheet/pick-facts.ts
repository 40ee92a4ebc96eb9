import type { Fact, FactId } from '../fact/fact';
import { turnAround } from '../fact/family';
import type { Dice } from './dice';

export interface Picking {
  readonly facts: readonly Fact[];
  /** How many to pick; fewer than there are facts. */
  readonly count: number;
  /** A fact comes with its turn-around or not at all, as far as that goes. */
  readonly inPairs: boolean;
  /** The fewest meetings come first. */
  readonly met: ReadonlyMap<FactId, number>;
  /** The cards that are on the sheet already. */
  readonly beside: readonly Fact[];
  /** No answer should stand on the sheet more often, or it would have to follow itself. */
  readonly mostAlike: number;
}

/** A fact and its turn-around, or one alone. */
type Unit = readonly Fact[];

/** Picks some facts of a set for a sheet, the least met first; the dice settle ties. */
export function pickFacts(picking: Picking, dice: Dice): readonly Fact[] {
  const { facts, inPairs, met } = picking;
  const metOf = (unit: Unit) => Math.min(...unit.map((fact) => met.get(fact.id) ?? 0));
  const units = dice.shuffled(inPairs ? pairUp(facts) : facts.map((fact) => [fact]));
  if (met.size > 0) units.sort((x, y) => metOf(x) - metOf(y));

  const tray = makeTray(picking);
  const few = units.filter((unit) => !tray.takes(unit, picking.mostAlike));
  const left = few.filter((unit) => !tray.takes(unit, Number.POSITIVE_INFINITY));
  const [pair] = left;
  if (tray.room() === 0 || !pair) return tray.picked();
  // One place is left and only pairs: a fact without a partner makes room, unless it is due more than they are.
  const lone = units.findLast((unit) => unit.length === 1 && !left.includes(unit));
  if (!lone || metOf(lone) < metOf(pair)) return [...tray.picked(), ...pair.slice(0, 1)];
  tray.giveBack(lone);
  if (!left.some((unit) => tray.takes(unit, picking.mostAlike))) tray.takes(pair, Number.POSITIVE_INFINITY);
  return tray.picked();
}

/** The facts picked so far, and how often each answer stands on the sheet with them. */
function makeTray({ count, beside }: Picking) {
  const taken = new Set<Unit>();
  const answers = new Map<number, number>();
  let room = count;
  const alike = (unit: Unit) => (unit[0] && answers.get(unit[0].answer)) ?? 0;
  const tell = (unit: Unit, by: 1 | -1) => {
    for (const { answer } of unit) answers.set(answer, (answers.get(answer) ?? 0) + by);
  };
  tell(beside, 1);
  return {
    room: () => room,
    picked: () => [...taken].flat(),
    /** Takes a unit if it fits and no answer then stands there more than `mostAlike` times. */
    takes(unit: Unit, mostAlike: number): boolean {
      if (unit.length > room || alike(unit) + unit.length > mostAlike) return false;
      taken.add(unit);
      room -= unit.length;
      tell(unit, 1);
      return true;
    },
    giveBack(unit: Unit): void {
      taken.delete(unit);
      room += unit.length;
      tell(unit, -1);
    },
  };
}

function pairUp(facts: readonly Fact[]): Unit[] {
  const byId = new Map(facts.map((fact) => [fact.id, fact]));
  const units: Unit[] = [];
  for (const fact of facts) {
    const partner = byId.get(turnAround(fact)?.id ?? fact.id);
    if (!partner || partner === fact) units.push([fact]);
    else if (fact.a < partner.a) units.push([fact, partner]);
  }
  return units;
}
