import type { FactReading, FactState, NotEnough } from './fact-reading';
import { type Knowing, manyAnswers } from './know';
import type { Pace } from './pace';

/** What a fact's answers come to, before a state is named. */
export interface Grounds {
  readonly answers: number;
  readonly days: number;
  readonly right: number;
  readonly knowing: Knowing;
  readonly pace: Pace | null;
}

export interface Named {
  readonly state: FactState;
  readonly notEnough: NotEnough | null;
  readonly unevenIn: FactReading['unevenIn'];
  readonly sureness: number;
  readonly isKnown: boolean;
}

/** Three own answers on two days, or nothing is said (design §5). */
const fewest = { answers: 3, days: 2 } as const;

/**
 * A state is named from this sureness on: that a fact is known takes more than that it is not, and more than whether it
 * comes quickly or slowly (our own decision; what it leads to is in DEVELOPERS.md).
 */
const sureFrom = { known: 0.92, pace: 0.75, uneven: 0.8, toLearn: 0.8 } as const;

type State = Exclude<FactState, 'notEnough'>;

/** The state of a fact: the first that is sure enough. */
export function nameState({ answers, days, right, knowing, pace: timed }: Grounds): Named {
  // Answers on paper have no times: a few timed ones beside them say nothing of the fact's pace.
  const pace = timed && timed.times >= fewest.answers ? timed : null;
  const uneven = {
    right: right < answers ? knowing.mixed : 0,
    pace: unevenPace(answers, knowing, pace),
  };
  const sure: Readonly<Record<State, number>> = {
    quick: Math.min(knowing.known, pace?.quick ?? 0),
    slow: Math.min(knowing.known, pace?.slow ?? 0),
    toLearn: knowing.toLearn,
    uneven: Math.max(uneven.right, uneven.pace),
  };
  const isKnown = knowing.known >= sureFrom.known;
  const states: readonly State[] = ['quick', 'slow', 'toLearn', 'uneven'];
  const likeliest = Math.max(...states.map((state) => sure[state]));
  const nothing = (why: NotEnough): Named => ({
    state: 'notEnough',
    notEnough: why,
    unevenIn: null,
    sureness: likeliest,
    isKnown,
  });
  if (answers < fewest.answers) return nothing('fewAnswers');
  if (days < fewest.days) return nothing('oneDay');
  const isNamed: Readonly<Record<State, boolean>> = {
    quick: isKnown && sure.quick >= sureFrom.pace,
    slow: isKnown && sure.slow >= sureFrom.pace,
    toLearn: sure.toLearn >= sureFrom.toLearn,
    uneven: sure.uneven >= sureFrom.uneven,
  };
  const state = states.find((one) => isNamed[one]);
  const unevenIn = state !== 'uneven' ? null : uneven.right >= uneven.pace ? 'right' : 'pace';
  if (state) return { state, notEnough: null, unevenIn, sureness: sure[state], isKnown };
  return nothing(isKnown && pace === null ? 'noTimes' : 'notSure');
}

/** Right, and over many answers now under the line and now over it. */
function unevenPace(answers: number, { known }: Knowing, pace: Pace | null): number {
  const isBetween = pace !== null && Math.max(pace.quick, pace.slow) < sureFrom.pace;
  return answers >= manyAnswers && isBetween ? known : 0;
}
