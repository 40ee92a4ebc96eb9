import type { Operation } from '../../core/fact/fact';
import { type AnswerFlag, answerFlags, answerTests } from './answer-flags';
import type { Setting } from './guess';
import { operationsGiving } from './operations-giving';

/** Everything an error can be called by: the look of the number, no answer at all, or a key before a thought. */
export type ErrorFlag = AnswerFlag | 'omission' | 'rapidGuess';

/** What an error is called: the first flag in the order of naming, or that two operations explain it alike. */
export type ErrorName = (typeof namingOrder)[number] | 'other' | 'cannotTell';

/** A wrong answer as it was sat. `given` holds the digits, `null` where none were; `firstKeyMs` from onset. */
export interface WrongAnswer extends Setting {
  readonly given: string | null;
  readonly firstKeyMs: number | null;
}

/** An error read: every flag that holds, its name, and the operations that would give this number. */
export interface ReadError {
  readonly flags: ReadonlySet<ErrorFlag>;
  readonly name: ErrorName;
  readonly operations: readonly Operation[];
}

/** A first key sooner than this, in ms, came before the fact could be read: the one cut declared beforehand. */
export const rapidGuessMs = 300;

/** The first that holds names the error; close operand, non-table and perseveration are only kept as flags. */
export const namingOrder = [
  'omission',
  'rapidGuess',
  'reversal',
  'runTogether',
  'otherOperation',
  'operandNamed',
  'operand',
  'offByOne',
  'offByTwo',
  'countingString',
  'table',
  'tenSlip',
  'keyingSlip',
] as const satisfies readonly ErrorFlag[];

/** All flags of a wrong answer and the likeliest name; the answer must be wrong. */
export function readError(answer: WrongAnswer): ReadError {
  const { given, firstKeyMs, fact } = answer;
  if (given === null || given === '')
    return { flags: new Set(['omission']), name: 'omission', operations: [] };
  const guess = { ...answer, digits: given, number: Number(given) };
  const flags = new Set<ErrorFlag>(answerFlags.filter((flag) => answerTests[flag](guess)));
  if (firstKeyMs !== null && firstKeyMs < rapidGuessMs) flags.add('rapidGuess');
  const operations = operationsGiving(fact, guess.number);
  const first = namingOrder.find((flag) => flags.has(flag)) ?? 'other';
  const name = first === 'otherOperation' && operations.length > 1 ? 'cannotTell' : first;
  return { flags, name, operations };
}
