import { type Fact, type FactId, parseFact } from '../core/fact/fact';
import type { SittingPlan } from '../core/record/sat';
import { pictureOf } from '../core/strategy/picture';
import type { Strategy } from '../core/strategy/strategy';
import { strategyFor } from '../core/strategy/strategy-for';
import { strategyLine } from '../core/strategy/words';
import type { Way, WayTo } from './way';

/** What the ways of a card round are made from. */
export interface WaySource {
  readonly plan: Pick<SittingPlan, 'purpose' | 'prompts' | 'shownFirst'>;
  /** Facts the child has, on which a strategy may rest. */
  readonly had: ReadonlySet<string>;
  /** The parent's own lines. */
  readonly lines: ReadonlyMap<FactId, string>;
}

/** The way to each new fact of a card round; none to the facts known already, and none outside of it. */
export function waysOf({ plan, had, lines }: WaySource): WayTo {
  if (plan.purpose !== 'cards') return () => null;
  const fresh = new Set((plan.shownFirst ?? []).map((place) => plan.prompts[place]));
  return (prompt) => (fresh.has(prompt) ? wayTo(prompt, had, lines) : null);
}

function wayTo(prompt: string, had: WaySource['had'], lines: WaySource['lines']): Way | null {
  const fact = parseFact(prompt);
  if (!fact) return null;
  const strategy = strategyFor(fact, ({ id }) => had.has(id));
  const own = lines.get(fact.id);
  // The tool's picture shows the tool's own way, which is not the parent's.
  if (own !== undefined) return { line: own, picture: pictureOf(asItStands(fact), fact) };
  const line = strategyLine(strategy);
  const picture = pictureOf(strategy, fact);
  return line === null && picture === null ? null : { line, picture };
}

function asItStands({ op, a, b }: Fact): Strategy {
  return { kind: 'turnAround', sign: op === 'add' ? '+' : '×', a, b };
}
