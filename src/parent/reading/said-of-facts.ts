import type { FactReading, FactState } from '../../readings/facts/fact-reading';
import type { Readiness } from '../../readings/move-on/readiness';
import type { SaidText } from './said-text';
import { say } from './say';

export type { SaidText };

export function saidOfFact(reading: FactReading): SaidText {
  const { state, right, answers: of, sureness, thinkMs, thinkIsAtMost, notEnough } = reading;
  const thinkS = (thinkMs ?? 0) / 1000;
  switch (state) {
    case 'quick':
      return say({ kind: 'quick', right, of, thinkS, atMost: thinkIsAtMost, sureness });
    case 'slow':
      return say({ kind: 'slow', right, of, thinkS, sureness });
    case 'uneven':
    case 'toLearn':
      return say({ kind: state, right, of, sureness });
    case 'notEnough':
      return say({ kind: 'notEnough', answers: of, right, why: notEnough ?? 'fewAnswers' });
  }
}

export function saidOfFacts(readings: readonly FactReading[]): readonly SaidText[] {
  const many = (state: FactState) => readings.filter((one) => one.state === state).length;
  return [
    say({
      kind: 'setFacts',
      facts: readings.length,
      quick: many('quick'),
      slow: many('slow'),
      uneven: many('uneven'),
      toLearn: many('toLearn'),
    }),
  ];
}

export function saidOfReadiness(readiness: Readiness, _child: string, _set: string): readonly SaidText[] {
  const { isReady, quick, facts, lastRight, lastOf, heldBack } = readiness;
  if (isReady) return [say({ kind: 'ready', quick, facts, lastRight, lastOf })];
  return [say({ kind: 'notReady', quick, facts, heldBack: heldBack.map(({ fact }) => fact) })];
}
