import type { Chance } from './chance';
import { calmChild, type MadeChild } from './made-child';

type Make = (chance: Chance) => MadeChild;

const withClock =
  (times: number, lessRight: number): Make =>
  (chance) => ({ ...calmChild(chance), clock: { times, lessRight } });

/** Some facts of the set far from known: wrong as often as right and, where right, counted. */
function notKnowing(child: MadeChild, share: number, chance: Chance, right = 0.5): MadeChild {
  const weak = new Set(child.setFacts.filter(() => chance.happens(share)));
  return {
    ...child,
    strengthOf: (fact) => (weak.has(fact.id) ? { right, exposures: 4 } : child.strengthOf(fact)),
  };
}

/** The grid of made children, by the truth about them. */
export const cells = {
  calm: calmChild,
  'slower ×1.15': withClock(1.15, 0),
  'slower ×1.3': withClock(1.3, 0),
  'slower ×1.5': withClock(1.5, 0),
  'less right −5': withClock(1, 0.05),
  'less right −15': withClock(1, 0.15),
  'not knowing': (chance) => notKnowing(calmChild(chance), 0.6, chance),
  'flustered ×1.5 and not knowing': (chance) => notKnowing(withClock(1.5, 0)(chance), 0.6, chance),
  'tired late': (chance) => ({ ...calmChild(chance), tired: { times: 1.6, lessRight: 0.12 } }),
  'improving fast': (chance) => {
    const child = calmChild(chance);
    const own = new Set(child.setFacts);
    return {
      ...child,
      strengthOf: (fact) => (own.has(fact.id) ? { right: 0.6, exposures: 5 } : child.strengthOf(fact)),
      learns: { right: 0.025, exposures: 4 },
    };
  },
  'guessing sibling': (chance) => ({ ...calmChild(chance), sibling: 0.15 }),
  rushing: (chance) => ({ ...calmChild(chance), hurry: { timed: 0.35, untimed: 0.07 } }),
  checking: (chance) => {
    const child = calmChild(chance);
    return {
      ...child,
      years: chance.between(6.5, 7.5),
      checks: 0.6,
      strengthOf: (fact) => ({ right: 0.99, exposures: child.strengthOf(fact).exposures }),
    };
  },
  counting: (chance) => {
    const child = calmChild(chance);
    const own = new Set(child.setFacts);
    return {
      ...child,
      years: chance.between(6.5, 8),
      strengthOf: (fact) => (own.has(fact.id) ? { right: 0.97, exposures: 3 } : child.strengthOf(fact)),
    };
  },
  'slow hands': (chance) => {
    const child = calmChild(chance);
    return { ...child, hand: { firstMs: 1900, gapMs: 1100, doneMs: 900, spread: 0.18 } };
  },
} as const satisfies Readonly<Record<string, Make>>;

export type CellName = keyof typeof cells;
