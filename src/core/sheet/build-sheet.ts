import type { Fact, FactId } from '../fact/fact';
import { knownFact } from '../fact/fact-list';
import { turnAround } from '../fact/family';
import { arrange } from './arrange';
import { type Dice, makeDice } from './dice';
import { pickFacts } from './pick-facts';

/** A fact of a set moved on from. */
export interface KeptFact {
  readonly fact: FactId;
  /** When it was last met, in any unit that rises with time (a day's number); −Infinity for never. */
  readonly lastSeen: number;
  /** The higher, the weaker. */
  readonly weakness: number;
}

/** What a sheet is made from. */
export interface SheetOrder {
  readonly set: readonly FactId[];
  readonly kept: readonly KeptFact[];
  /** In facts: a multiple of five from 5 to 100. */
  readonly length: number;
  /** Share of kept facts, 0 to 1. */
  readonly keptShare: number;
  readonly seed: number;
  /**
   * How often each fact of the set was met lately. Where not all have a place the least met come first, so that
   * on a sheet shorter than its set none is left out for good; with an empty map chance alone decides.
   */
  readonly met: ReadonlyMap<FactId, number>;
}

/** A rule that could not hold: too few facts at all, too few kept ones, half a pair, too close, same answers. */
export type SheetRule = 'length' | 'keptShare' | 'turnArounds' | 'apart' | 'equalAnswers';

export interface Sheet {
  readonly facts: readonly FactId[];
  /** Which rules had to give way; empty on nearly every sheet. */
  readonly relaxed: readonly SheetRule[];
}

/** Whether a sheet may be that long: a multiple of five from 5 to 100. */
export function isSheetLength(length: number): boolean {
  return Number.isInteger(length / 5) && length >= 5 && length <= 100;
}

/**
 * A sheet by the rules of the design: each fact of the set as often as the others, the same fact never within
 * three cards, no answer twice running where that can be avoided, both turn-arounds, a share of kept facts,
 * each at most once. Unknown ids are passed over; without a set the kept facts stand in for it. The same order
 * always gives the same sheet.
 */
export function buildSheet(order: SheetOrder): Sheet {
  const { length, keptShare } = order;
  const dice = makeDice(order.seed);
  const given = factsOf(order.set);
  const ranked = rankKept(order.kept, new Set(order.set), dice);
  const set = given.length > 0 ? given : ranked.slice(0, length);
  const wanted = Math.round(length * keptShare);
  const kept = set === given ? ranked.slice(0, wanted) : [];

  const fromSet = drawSet(set, length - kept.length, kept, order.met, dice);
  const { facts, tooClose, alike } = arrange([...fromSet, ...kept], dice);
  const relaxed: SheetRule[] = [];
  if (facts.length < length) relaxed.push('length');
  if (set === given && kept.length < wanted) relaxed.push('keptShare');
  if (lacksPartner(set, fromSet)) relaxed.push('turnArounds');
  if (tooClose > 0) relaxed.push('apart');
  if (alike > 0) relaxed.push('equalAnswers');
  return { facts: facts.map((fact) => fact.id), relaxed };
}

function factsOf(ids: readonly FactId[]): readonly Fact[] {
  return [...new Set(ids)].map(knownFact).filter((fact) => fact !== null);
}

/** Kept facts, the longest unseen first, then the weakest, then as the dice fall; those in the set left out. */
function rankKept(kept: readonly KeptFact[], set: ReadonlySet<FactId>, dice: Dice): readonly Fact[] {
  const byAge = (x: KeptFact, y: KeptFact) =>
    x.lastSeen === y.lastSeen ? y.weakness - x.weakness : x.lastSeen < y.lastSeen ? -1 : 1;
  const ranked = dice.shuffled(kept.filter(({ fact }) => !set.has(fact))).sort(byAge);
  return factsOf(ranked.map(({ fact }) => fact));
}

function drawSet(
  set: readonly Fact[],
  count: number,
  kept: readonly Fact[],
  met: ReadonlyMap<FactId, number>,
  dice: Dice,
): readonly Fact[] {
  if (set.length === 0) return [];
  const rounds = Math.floor(count / set.length);
  const full = Array.from({ length: rounds }, () => set).flat();
  const picked = pickFacts(
    {
      facts: set,
      count: count - full.length,
      inPairs: rounds === 0,
      met,
      beside: [...full, ...kept],
      mostAlike: Math.ceil((count + kept.length) / 2),
    },
    dice,
  );
  return [...full, ...picked];
}

function lacksPartner(set: readonly Fact[], drawn: readonly Fact[]): boolean {
  const onSheet = new Set(drawn.map((fact) => fact.id));
  if (set.every((fact) => onSheet.has(fact.id))) return false;
  const inSet = new Set(set.map((fact) => fact.id));
  return drawn.some((fact) => {
    const partner = turnAround(fact)?.id ?? fact.id;
    return inSet.has(partner) && !onSheet.has(partner);
  });
}
