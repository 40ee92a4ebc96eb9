import type { FactReading, FactState } from '../facts/fact-reading';
import type { FactSentence } from './sentence';

/** What is known of one fact. */
export function sentenceOfFact(reading: FactReading): FactSentence {
  const { state, right, answers: of, sureness, thinkMs, thinkIsAtMost, notEnough } = reading;
  const thinkS = (thinkMs ?? 0) / 1000;
  switch (state) {
    case 'quick':
      return { kind: 'quick', right, of, thinkS, atMost: thinkIsAtMost, sureness };
    case 'slow':
      return { kind: 'slow', right, of, thinkS, sureness };
    case 'uneven':
    case 'toLearn':
      return { kind: state, right, of, sureness };
    case 'notEnough':
      return { kind: 'notEnough', answers: of, right, why: notEnough ?? 'notSure' };
  }
}

/** How many facts are in which state. */
export function sentenceOfFacts(readings: readonly FactReading[]): FactSentence {
  const many = (state: FactState) => readings.filter((one) => one.state === state).length;
  return {
    kind: 'setFacts',
    facts: readings.length,
    quick: many('quick'),
    slow: many('slow'),
    uneven: many('uneven'),
    toLearn: many('toLearn'),
    tooFew: readings.filter(({ notEnough: why }) => why === 'fewAnswers' || why === 'oneDay').length,
  };
}
