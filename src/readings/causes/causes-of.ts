import type { Fact } from '../../core/fact/fact';
import { isBasic } from '../../core/fact/fact-list';
import type { Answer } from '../child-log/answer';
import type { ReadSat } from '../child-log/child-log';
import { type ReadError, readError, type WrongAnswer } from '../errors/read-error';

/** A wrong or skipped answer with its likely cause. */
export interface Cause {
  readonly answer: Answer;
  readonly wrong: WrongAnswer;
  readonly error: ReadError;
}

/** Why the wrong answers of a sitting may have been wrong; `keypad` is the child's order of keys. */
export function causesOf({ answers, ruled }: ReadSat, keypad: 'phone' | 'calculator'): readonly Cause[] {
  const reach = ruled.sat.prompts.some(
    (prompt) => !prompt.startsWith('copy') && !isBasic(prompt as Fact['id']),
  )
    ? 12
    : 9;
  return answers.flatMap((answer, index): readonly Cause[] => {
    if (answer.outcome === 'right') return [];
    const { fact, firstKeyMs, via } = answer;
    const given = answer.given;
    const before = answers[index - 1]?.given;
    const wrong: WrongAnswer = {
      fact,
      given,
      firstKeyMs,
      before: before === null || before === undefined ? null : Number(before),
      pad: via === 'keys' ? 'keyboard' : keypad,
      reach,
    };
    return [{ answer, wrong, error: readError(wrong) }];
  });
}
