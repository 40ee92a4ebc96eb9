import type { Fact } from '../core/fact/fact';
import { ageScaling, checkingShare, hurried, readMs, spread } from './assumptions';
import type { Chance } from './chance';
import type { Mind } from './made-child';
import { countingMs, countSteps, memoryMs, memoryShare } from './strategy';
import { wrongAnswer } from './wrong-answer';

/** What a card comes in. */
export interface Setting {
  readonly timed: boolean;
  /** How far down the sheet, 0 to 1. */
  readonly along: number;
  /** The day's own pace, a factor on think time. */
  readonly pace: number;
}

/** What a made child makes of a fact; `answer` is `null` where it skips. */
export interface Thought {
  readonly thinkMs: number;
  readonly answer: number | null;
}

/** Thinks of a fact: hurried, or remembered, or counted. */
export function thinkOf(fact: Fact, mind: Mind, setting: Setting, chance: Chance): Thought {
  const { traits } = mind;
  const { ageYears, right, rushing, clock } = traits;
  const exposures = mind.exposures(fact);
  const shift = (setting.timed ? clock.logThink : 0) + traits.tiring * setting.along;
  const slowly = (ms: number, s: number) => ms * Math.exp(shift) * setting.pace * chance.factor(s);
  const give = (thinkMs: number, chanceRight: number): Thought => {
    const isRight = chance.happens(chanceRight - (setting.timed ? clock.accuracy : 0));
    return { thinkMs, answer: isRight ? fact.answer : wrongAnswer(fact, chance) };
  };

  if (chance.happens(setting.timed ? rushing.timed : rushing.untimed)) {
    return give(slowly(memoryMs(ageYears, exposures) * hurried.time, spread.memory), hurried.right);
  }
  const isRemembered = chance.happens(memoryShare(exposures));
  if (!isRemembered && chance.happens(traits.skipping)) {
    return { thinkMs: slowly(countingMs(ageYears, fact), spread.counting), answer: null };
  }
  const checked = chance.happens(traits.checking) ? 1 + checkingShare : 1;
  return isRemembered
    ? give(slowly(memoryMs(ageYears, exposures) * checked, spread.memory), right.memory)
    : give(
        slowly(countingMs(ageYears, fact) * checked, spread.counting),
        right.memory * right.step ** countSteps(fact),
      );
}

/** Reads a whole fact that is shown: the time before the hand moves. */
export function readingMs({ traits }: Mind, chance: Chance): number {
  return readMs * ageScaling(traits.ageYears) * chance.factor(spread.memory);
}
