import {
  type FactReading,
  type FactState,
  isRightSoFar,
  isUnevenWithClock,
  type NotEnough,
} from '../facts/fact-reading';
import type { Counted, FactSentence } from './sentence';

/** What is known of one fact. */
export function sentenceOfFact(reading: FactReading): FactSentence {
  const { state, sureness, isKnown, thinkMs, thinkIsAtMost, unevenIn, notEnough } = reading;
  const counted = countedOf(reading);
  const thinkS = (thinkMs ?? 0) / 1000;
  switch (state) {
    case 'quick':
      return { kind: 'quick', counted, thinkS, atMost: thinkIsAtMost, sureness };
    case 'slow':
      return { kind: 'slow', counted, thinkS, sureness };
    case 'uneven':
      return { kind: 'uneven', counted, unevenIn, sureness };
    case 'toLearn':
      return { kind: 'toLearn', counted, sureness };
    case 'notEnough':
      return { kind: 'notEnough', counted, why: notEnough ?? 'notSure', isKnown };
  }
}

function countedOf({ spoken, answers, slips, withoutClock }: FactReading): Counted {
  return { ...spoken, all: answers, slips, withoutClock };
}

/** How many facts are in which state; `hurried` where the last sheet with the clock was rushed. */
export function sentenceOfFacts(
  readings: readonly FactReading[],
  scope: 'all' | 'plain' = 'plain',
  hurried = false,
): FactSentence {
  const inState = (state: FactState) => readings.filter((one) => one.state === state).length;
  const lacking = (why: NotEnough) => readings.filter(({ notEnough }) => notEnough === why).length;
  return {
    kind: 'setFacts',
    scope,
    hurried,
    facts: readings.length,
    quick: inState('quick'),
    slow: inState('slow'),
    uneven: inState('uneven'),
    unevenWithClock: readings.filter(isUnevenWithClock).length,
    toLearn: inState('toLearn'),
    soFar: readings.filter(isRightSoFar).length,
    fewAnswers: lacking('fewAnswers'),
    oneDay: lacking('oneDay'),
  };
}
