import type { Fact, FactId } from '../../../src/core/fact/fact';
import { setById } from '../../../src/core/set/teaching-sets';
import type { Chance } from './chance';
import { rememberedShare, spreadOf, stepsOf, thinkMedians } from './strategy';

/** The truth about one fact. */
export interface Strength {
  /** Chance of being right without hurry or clock. */
  readonly right: number;
  /** How often it has been met before the first day: what is not remembered is counted. */
  readonly exposures: number;
}

/** The truth about a made child, which no reading sees. */
export interface MadeChild {
  readonly years: number;
  readonly hand: {
    readonly firstMs: number;
    readonly gapMs: number;
    readonly doneMs: number;
    readonly spread: number;
  };
  readonly set: string;
  readonly setFacts: readonly FactId[];
  readonly kept: readonly FactId[];
  readonly strengthOf: (fact: Fact) => Strength;
  /** On days with the clock: think time by this factor, this many points less often right. */
  readonly clock: { readonly times: number; readonly lessRight: number };
  /** Share of cards answered in a hurry, with the clock and without. */
  readonly hurry: { readonly timed: number; readonly untimed: number };
  /** Share of cards counted over once the answer is there. */
  readonly checks: number;
  /** By the sheet's end think time is longer by this factor, and right less often by these points. */
  readonly tired: { readonly times: number; readonly lessRight: number };
  /** What each meeting of a fact adds to its chance of being right, and to its exposures. */
  readonly learns: { readonly right: number; readonly exposures: number };
  /** Chance that a sibling sits the sheet by guessing. */
  readonly sibling: number;
}

/** Share of a hurried answer's usual time, and its chance of being right. */
const hurried = { time: 0.4, right: 0.45 } as const;

/** A calm child that knows its sets, drawn at some age with some hands. Everything else is made from it. */
export function calmChild(chance: Chance): MadeChild {
  const years = chance.between(7, 11);
  const [set, kept] = chance.shuffled(pairs)[0] ?? pairs[0];
  const firstMs = chance.between(380, 620);
  const level = chance.between(35, 90);
  const strengths = new Map<string, Strength>();
  return {
    years,
    hand: { firstMs, gapMs: firstMs * chance.between(0.4, 0.6), doneMs: firstMs * 0.6, spread: 0.18 },
    set,
    setFacts: setById(set)?.facts ?? [],
    kept: kept.flatMap((id) => setById(id)?.facts ?? []),
    strengthOf(fact) {
      const own = strengths.get(fact.id) ?? {
        right: chance.between(0.92, 0.99),
        exposures: Math.max(15, level * chance.factor(0.3) - stepsOf(fact) * 2),
      };
      strengths.set(fact.id, own);
      return own;
    },
    clock: { times: 1, lessRight: 0 },
    hurry: { timed: 0.01, untimed: 0.01 },
    checks: 0.03,
    tired: { times: 1.05, lessRight: 0 },
    learns: { right: 0, exposures: 0 },
    sibling: 0,
  };
}

const pairs = [
  ['times-4', ['times-2', 'times-5']],
  ['times-8', ['times-2', 'times-5', 'times-4']],
  ['times-6', ['times-2', 'times-3', 'times-5']],
  ['plus-8', ['plus-2', 'doubles', 'makes-ten']],
  ['past-ten', ['plus-2', 'doubles', 'plus-9']],
  ['divide-by-4', ['divide-by-2', 'divide-by-5']],
  ['take-away-9', ['take-away-2', 'halves']],
] as const satisfies readonly (readonly [string, readonly string[]])[];

/** How a fact comes on a card: the think time and whether it is right. */
export function comes(
  child: MadeChild,
  fact: Fact,
  met: number,
  on: { readonly timed: boolean; readonly along: number; readonly pace: number },
  chance: Chance,
): { readonly thinkMs: number; readonly isRight: boolean } {
  const { right, exposures } = child.strengthOf(fact);
  const { remembered, counted } = thinkMedians(fact, child.years);
  const clockTimes = on.timed ? child.clock.times : 1;
  const times = clockTimes * child.tired.times ** on.along * on.pace;
  const less = (on.timed ? child.clock.lessRight : 0) + child.tired.lessRight * on.along;
  if (chance.happens(on.timed ? child.hurry.timed : child.hurry.untimed)) {
    const thinkMs = remembered * hurried.time * on.pace * chance.factor(spreadOf.remembered);
    return { thinkMs, isRight: chance.happens(hurried.right) };
  }
  const isRemembered = chance.happens(rememberedShare(exposures + met * child.learns.exposures));
  const first =
    (isRemembered ? remembered : counted) *
    chance.factor(isRemembered ? spreadOf.remembered : spreadOf.counted);
  const over = chance.happens(child.checks) ? counted * chance.factor(spreadOf.counted) : 0;
  const thinkMs = (first + over) * times;
  const share = Math.min(0.995, right + met * child.learns.right);
  return { thinkMs, isRight: chance.happens(share - less) };
}
