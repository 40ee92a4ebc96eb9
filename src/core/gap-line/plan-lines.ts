import { type FactId, parseFact } from '../fact/fact';
import { pairOf } from '../fact/fact-list';
import { type Dice, makeDice } from '../sheet/dice';
import { type LineId, lineIds, reachOf, shapeNames } from './gap-line';
import { isTellable, type StoryId, settings } from './story';

/** Steps every child counts in, and the current table besides (common practice, no source). */
const usualSteps: readonly number[] = [2, 3, 5, 10];

/** How far a line counts: for a set of sums, and for one of products. */
const topOf = { sums: 50, products: 120 } as const;

/** What gap lines and stories are made from. `facts`: today's, from which the stories are told. */
export interface LineOrder {
  readonly set: readonly FactId[];
  readonly facts: readonly FactId[];
  readonly lines: number;
  readonly stories: number;
  readonly seed: number;
}

/** The day's gap lines, each with its questions, then its stories; the same for the same order. */
export function planLines({ set, facts, lines, stories, seed }: LineOrder): readonly (LineId | StoryId)[] {
  const dice = makeDice(seed);
  const table = tableOf(set);
  const steps = table === null || usualSteps.includes(table) ? usualSteps : [...usualSteps, table];
  // The current table comes first, where it is one: it is what the child is at.
  const order = [
    ...(table === null ? [] : [table]),
    ...dice.shuffled(steps.filter((step) => step !== table)),
  ];
  const top = isOfSums(set) ? topOf.sums : topOf.products;
  const drawn = Array.from({ length: lines }, (_, nth) =>
    drawLine(order[nth % order.length] ?? 2, top, dice),
  );
  return [...drawn.flat(), ...drawStories(facts, stories, dice)];
}

function drawLine(step: number, top: number, dice: Dice): readonly LineId[] {
  const way = dice.below(2) === 0 ? 'up' : 'down';
  // By tens a line may begin anywhere; other steps keep to their table.
  const grain = step === 10 ? 1 : step;
  const least = grain * dice.below(Math.floor((Math.max(top, 12 * step) - reachOf(step)) / grain) + 1);
  const shape = shapeNames[dice.below(shapeNames.length)] ?? 'a';
  return lineIds(way, step, way === 'up' ? least : least + reachOf(step), shape);
}

function drawStories(facts: readonly FactId[], count: number, dice: Dice): readonly StoryId[] {
  const tellable = [...new Set(facts)].flatMap((id) => {
    const fact = parseFact(id);
    return fact && isTellable(fact) ? [fact] : [];
  });
  return dice
    .shuffled(tellable)
    .slice(0, count)
    .map((fact): StoryId => {
      const names = settings[fact.op];
      return `story-${names[dice.below(names.length)] ?? names[0]}-${fact.id}`;
    });
}

/** The table a set of × or ÷ is of: the one number from 2 up in all its facts; `null` where there is none or more. */
export function tableOf(set: readonly FactId[]): number | null {
  const facts = set.map(parseFact);
  const tables = Array.from({ length: 11 }, (_, index) => index + 2).filter((table) =>
    facts.every((fact) => fact && (fact.op === 'mul' || fact.op === 'div') && pairOf(fact).includes(table)),
  );
  const [table] = tables;
  return tables.length === 1 && table !== undefined ? table : null;
}

function isOfSums(set: readonly FactId[]): boolean {
  return set.some((id) => id.startsWith('add') || id.startsWith('sub'));
}
