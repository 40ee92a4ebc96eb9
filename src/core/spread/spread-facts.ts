import type { Fact, FactId, Operation } from '../fact/fact';
import { knownFact, operations } from '../fact/fact-list';
import { turnAround } from '../fact/family';
import type { FactSet } from '../set/fact-set';
import { defaultOrder } from '../set/teaching-sets';
import { arrange } from '../sheet/arrange';
import { type Dice, makeDice } from '../sheet/dice';

/** Facts asked over both days: two sheets of 20 to 25 (design: a short untimed spread; the numbers are our own). */
const whole = { least: 40, most: 50 } as const;

/** Which half of a spread a day asks. */
export type SpreadPart = 0 | 1;

/** The teaching groups a spread looks into: those of its operations without the option to 12s, in the order taught. */
export function spreadGroups(ops: readonly Operation[]): readonly FactSet[] {
  return operations
    .filter((op) => ops.includes(op))
    .flatMap((op) => defaultOrder(op).filter(({ kind }) => kind === 'group'));
}

/**
 * The facts of one half, in the order asked; the two halves of a seed share none. Every group has as many facts as the
 * others, or one more, over the two days, and is asked on both where it has two. No turn-around of a fact
 * asked already where a group has enough others.
 */
export function spreadFacts(ops: readonly Operation[], part: SpreadPart, seed: number): readonly FactId[] {
  const groups = spreadGroups(ops);
  if (groups.length === 0) return [];
  const dice = makeDice(seed);
  const picked = pickEvenly(groups, dice);
  const half = picked.filter((_, index) => index % 2 === part);
  return arrange(half, makeDice(seed + part)).facts.map(({ id }) => id);
}

function pickEvenly(groups: readonly FactSet[], dice: Dice): readonly Fact[] {
  const each = Math.max(1, Math.floor(whole.most / groups.length));
  const more = new Set(dice.shuffled(groups).slice(0, Math.max(0, whole.least - each * groups.length)));
  const taken = new Set<FactId>();
  return groups.flatMap((group) => {
    const facts = pickFrom(group, each + (more.has(group) ? 1 : 0), taken, dice);
    for (const { id } of facts) taken.add(id);
    return facts;
  });
}

/** Some facts of a group that no other group has given; turn-arounds of facts given come last. */
function pickFrom(group: FactSet, many: number, taken: ReadonlySet<FactId>, dice: Dice): readonly Fact[] {
  const open = dice
    .shuffled(group.facts)
    .filter((id) => !taken.has(id))
    .flatMap((id) => knownFact(id) ?? []);
  const seen = new Set<FactId>();
  const first: Fact[] = [];
  const last: Fact[] = [];
  for (const fact of open) {
    const partner = turnAround(fact)?.id;
    if (partner && (seen.has(partner) || taken.has(partner))) last.push(fact);
    else first.push(fact);
    seen.add(fact.id);
  }
  return [...first, ...last].slice(0, many);
}
