import type { FactState, NotEnough } from './fact-reading';
import type { Knowing } from './know';
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
  readonly sureness: number;
}

/** Three own answers on two days, or nothing is said (design §5). */
export const fewest = { answers: 3, days: 2 } as const;

/** A state is named from this sureness on: a word that things are well takes more than one that they are not. */
const sureFrom = { quick: 0.9, slow: 0.85, uneven: 0.8, toLearn: 0.8 } as const;

type State = keyof typeof sureFrom;

/** The state of a fact: the first that is sure enough. */
export function nameState({ answers, days, right, knowing, pace }: Grounds): Named {
  const sure: Readonly<Record<State, number>> = {
    quick: Math.min(knowing.known, pace?.quick ?? 0),
    slow: Math.min(knowing.known, pace?.slow ?? 0),
    toLearn: knowing.toLearn,
    uneven: Math.max(right < answers ? knowing.mixed : 0, unevenPace(answers, knowing, pace)),
  };
  const states: readonly State[] = ['quick', 'slow', 'toLearn', 'uneven'];
  const likeliest = Math.max(...states.map((state) => sure[state]));
  const nothing = (why: NotEnough): Named => ({ state: 'notEnough', notEnough: why, sureness: likeliest });
  if (answers < fewest.answers) return nothing('fewAnswers');
  if (days < fewest.days) return nothing('oneDay');
  const state = states.find((one) => sure[one] >= sureFrom[one]);
  if (state) return { state, notEnough: null, sureness: sure[state] };
  return nothing(knowing.known >= sureFrom.quick && pace === null ? 'noTimes' : 'notSure');
}

/** Right, and from so many answers on now under the line and now over it. */
const manyAnswers = 12;

function unevenPace(answers: number, { known }: Knowing, pace: Pace | null): number {
  const isBetween = pace !== null && pace.quick < sureFrom.quick && pace.slow < sureFrom.slow;
  return answers >= manyAnswers && isBetween ? known : 0;
}
